package hornwright.desk.drawing;

import hornwright.bench.horn.PlaceKind;
import hornwright.desk.drawing.Showing.Shown;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Sets marks for paper at a scale, lying or turned a quarter clockwise to stand. Shapes turn with the sheet; words stay
 * upright.
 */
final class PrintSvg {
    private final Showing showing;
    private final double unitsPerMm;
    private final boolean standing;
    private final double height;
    private final Spot shift;
    private final String prefix;
    private final StringBuilder out = new StringBuilder();
    private final List<PrintWord> words = new ArrayList<>();
    private final Set<Stuff> used = EnumSet.noneOf(Stuff.class);

    /**
     * @param prefix of ids, so that two drawings may stand on one page
     * @param height as it lies, in units
     * @param shift where the corner of the turned drawing comes to lie on the print, in units
     */
    PrintSvg(Showing showing, String prefix, double height, double unitsPerMm, boolean standing, Spot shift) {
        this.showing = showing;
        this.prefix = prefix;
        this.height = height;
        this.unitsPerMm = unitsPerMm;
        this.standing = standing;
        this.shift = shift;
    }

    /** Where a spot of the drawing comes to lie on the print, in units. */
    Spot turned(Spot spot) {
        Spot there = standing ? new Spot(height - spot.y(), spot.x()) : spot;
        return there.plus(shift.x(), shift.y());
    }

    /** The drawing itself, to be turned with the sheet. */
    void draw(List<Mark> marks) {
        String move = "translate(%s)".formatted(Text.at(standing ? shift.plus(height, 0) : shift));
        out.append("<g transform=\"")
                .append(move)
                .append(standing ? " rotate(90)" : "")
                .append("\">");
        marks.forEach(mark -> put(mark, null));
        out.append("</g>");
    }

    /** A shape that is already where it belongs on the print. */
    void add(Ink ink, Outline outline) {
        shape(ink, outline, "");
    }

    /** Words at a spot of the print, in units. */
    void say(Mark.Type type, String text, Spot at, double size, PrintWord.Align align) {
        words.add(new PrintWord(text, at.x() / unitsPerMm, at.y() / unitsPerMm, size / unitsPerMm, align, type.face()));
    }

    /** The finished print of that size in units. */
    Print print(double printWidth, double printHeight, String says) {
        StringBuilder defs = new StringBuilder("<defs>");
        used.forEach(stuff -> defs.append(stuff.printPattern(prefix + stuff.word())));
        defs.append("<pattern id=\"")
                .append(prefix)
                .append("hatch\" width=\"5\" height=\"5\" patternUnits=\"userSpaceOnUse\"")
                .append(" patternTransform=\"rotate(45)\"><rect width=\"5\" height=\"5\" fill=\"#ffffff\"/>")
                .append("<path d=\"M0 0V5\" stroke=\"#000000\" stroke-width=\"1.2\"/></pattern></defs>");
        String box = String.format(Locale.ROOT, "0 0 %.1f %.1f", printWidth, printHeight);
        return new Print(
                defs.append(out).toString(), box, printWidth / unitsPerMm, printHeight / unitsPerMm, words, says);
    }

    private void put(Mark mark, @Nullable Shown shown) {
        switch (mark) {
            case Mark.Shape(Ink ink, Outline outline) -> shape(ink, outline, ink == Ink.FACE ? fill(shown) : "");
            case Mark.Group(String name, List<Mark> marks) -> marks.forEach(inner -> put(inner, shown));
            case Mark.Upright upright -> upright(upright, shown);
            case Mark.Handle handle -> handle(handle);
            case Mark.Words(Mark.Type type, String text, Spot at, double size, PrintWord.Align align) ->
                say(type, text, base(at, size), size, align);
        }
    }

    private void upright(Mark.Upright upright, @Nullable Shown shown) {
        Spot pivot = upright.pivot();
        out.append(standing ? "<g transform=\"rotate(-90 " + Text.at(pivot) + ")\">" : "<g>");
        for (Mark mark : upright.marks()) {
            if (mark instanceof Mark.Words words) {
                Spot there = turned(pivot)
                        .plus(words.at().x() - pivot.x(), words.at().y() - pivot.y());
                say(words.type(), words.text(), there, words.size(), words.align());
            } else {
                put(mark, shown);
            }
        }
        out.append("</g>");
    }

    /** Words that are turned back keep their middle, not their base line. */
    private Spot base(Spot at, double size) {
        return standing ? turned(at.plus(0, -size * 0.35)).plus(0, size * 0.35) : turned(at);
    }

    private void handle(Mark.Handle handle) {
        Shown shown = showing.of(handle.place());
        handle.marks().forEach(mark -> put(mark, shown));
        PlaceKind kind = handle.place().kind();
        if (shown.standing().hasToken() && kind != PlaceKind.ADHESIVE) {
            token(shown.standing(), handle.token(), kind == PlaceKind.PAD ? "" : " scale(.62)");
        }
    }

    private void token(Standing state, Spot at, String scale) {
        String turn = standing ? " rotate(-90)" : "";
        out.append("<g transform=\"translate(")
                .append(Text.at(at))
                .append(')')
                .append(turn)
                .append(scale)
                .append("\">");
        shape(Ink.TOKEN_BACK, new Outline.Circle(new Spot(0, 0), 7.6), "");
        shape(Ink.TOKEN, new Outline.Path(state.token()), "");
        out.append("</g>");
    }

    private String fill(@Nullable Shown shown) {
        if (shown == null) {
            return "";
        }
        if (shown.standing() == Standing.STALE) {
            return "url(#" + prefix + "hatch)";
        }
        if (shown.standing() == Standing.MISSING) {
            return "#ffffff";
        }
        Stuff stuff = Stuff.of(shown.material());
        if (!stuff.patterned()) {
            return stuff.ground();
        }
        used.add(stuff);
        return "url(#" + prefix + stuff.word() + ")";
    }

    private void shape(Ink ink, Outline outline, String fill) {
        if (ink != Ink.HIT) {
            out.append(outline.opening()).append(' ').append(ink.print(fill)).append("/>");
        }
    }
}
