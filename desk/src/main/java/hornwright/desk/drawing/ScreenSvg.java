package hornwright.desk.drawing;

import hornwright.bench.horn.Owner;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.PlaceKind;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * The unrolled horn for a page: classes for every look, a handle for every place, no colours and no styles of its own.
 * The page chooses the layer with data-layer and turns the sheet upright with a class.
 */
final class ScreenSvg {
    private final Showing showing;
    private final String prefix;
    private final StringBuilder out = new StringBuilder();
    private final Set<Stuff> used = EnumSet.noneOf(Stuff.class);
    private final Map<String, String> figures = new HashMap<>();
    private final @Nullable Function<Place, String> address;

    /**
     * @param prefix of ids, so that two drawings may stand on one page
     */
    ScreenSvg(Showing showing, String prefix) {
        this(showing, prefix, null);
    }

    /**
     * @param address where a place leads to when it is touched; null where a script alone knows what a touch means
     */
    ScreenSvg(Showing showing, String prefix, @Nullable Function<Place, String> address) {
        this.showing = showing;
        this.prefix = prefix;
        this.address = address;
    }

    String unrolled(UnrolledHorn horn, Box part) {
        horn.marks().forEach(this::put);
        labels("lying", horn.lyingLabels());
        labels("upright", horn.uprightLabels());
        return svg("unrolled", "The horn unrolled, neck to bell", part);
    }

    String figure(String name, String says, Box box, List<Mark> marks) {
        marks.forEach(this::put);
        return svg(name, says, box);
    }

    private String svg(String name, String says, Box box) {
        String body = out.toString();
        return ("<svg class=\"%s\" xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"%s %s %s %s\" role=\"group\""
                        + " aria-label=\"%s\">%s%s</svg>\n")
                .formatted(
                        name,
                        Text.n(box.left()),
                        Text.n(box.top()),
                        Text.n(box.right() - box.left()),
                        Text.n(box.bottom() - box.top()),
                        Text.escaped(says),
                        defs(),
                        body);
    }

    private String defs() {
        StringBuilder defs = new StringBuilder("<defs>");
        used.forEach(stuff -> defs.append(stuff.screenPattern(prefix + stuff.word())));
        defs.append("<pattern id=\"")
                .append(prefix)
                .append("hatch\" width=\"5\" height=\"5\" patternUnits=\"userSpaceOnUse\"")
                .append(" patternTransform=\"rotate(45)\"><rect class=\"g-stale\" width=\"5\" height=\"5\"/>")
                .append("<path class=\"k-stale\" d=\"M0 0V5\"/></pattern>");
        for (Standing standing : Standing.values()) {
            if (standing.hasToken()) {
                defs.append("<g id=\"")
                        .append(prefix)
                        .append("is-")
                        .append(standing.word())
                        .append("\"><circle class=\"i-back\" r=\"7.6\"/>");
                defs.append("<path class=\"i-line\" d=\"")
                        .append(standing.token())
                        .append("\"/></g>");
            }
        }
        return defs.append("</defs>\n").toString();
    }

    private void put(Mark mark) {
        switch (mark) {
            case Mark.Shape(Ink ink, Outline outline) -> shape(ink, outline, "");
            case Mark.Group(String name, List<Mark> marks) -> {
                out.append("<g class=\"").append(name).append("\">\n");
                marks.forEach(this::put);
                out.append("</g>\n");
            }
            case Mark.Upright(Spot pivot, List<Mark> marks) -> {
                out.append("<g class=\"stays-upright\">");
                marks.forEach(this::put);
                out.append("</g>");
            }
            case Mark.Handle handle -> handle(handle);
            case Mark.Words words ->
                words(words.type().css() + " " + words.align().anchor(), words.text(), words.at());
        }
    }

    private void shape(Ink ink, Outline outline, String fill) {
        out.append(outline.opening())
                .append(" class=\"")
                .append(ink.css())
                .append('"')
                .append(fill)
                .append("/>");
    }

    private void words(String name, String text, Spot at) {
        out.append("<text class=\"%s\" x=\"%s\" y=\"%s\">%s</text>"
                .formatted(name, Text.n(at.x()), Text.n(at.y()), Text.escaped(text)));
    }

    /** A pad has a full token, what is smaller a smaller one; a film of adhesive is too thin for any. */
    private void token(Mark.Handle handle, Standing standing) {
        PlaceKind kind = handle.place().kind();
        if (standing.hasToken() && kind != PlaceKind.ADHESIVE) {
            out.append("<use class=\"token\" href=\"#%sis-%s\" transform=\"translate(%s)%s\"/>"
                    .formatted(
                            prefix,
                            standing.word(),
                            Text.at(handle.token()),
                            kind == PlaceKind.PAD ? "" : " scale(.62)"));
        }
    }

    /** Ids of the unrolled horn begin with at-, so that a page may point at a place. */
    private String idStart() {
        return prefix.equals("horn-") ? "at-" : prefix + "at-";
    }

    private void handle(Mark.Handle handle) {
        Place place = handle.place();
        Showing.Shown shown = showing.of(place);
        Stuff stuff = Stuff.of(shown.material());
        String name = Text.escaped(place.display() + ", " + shown.inWords());
        out.append(
                "<%s class=\"place p-%s m-%s\" id=\"%s%s\" data-place=\"%s\" data-state=\"%s\"%s%s tabindex=\"0\" aria-label=\"%s\"><title>%s</title>"
                        .formatted(
                                address == null ? "g" : "a",
                                place.kind().word(),
                                stuff.word(),
                                idStart(),
                                place.id(),
                                place.id(),
                                shown.standing().word(),
                                shown.depth() == 0 ? "" : " data-depth=\"" + shown.depth() + "\"",
                                address == null
                                        ? " role=\"button\""
                                        : " href=\"" + Text.escaped(address.apply(place)) + "\"",
                                name,
                                name));
        if (shown.figure() != null && place.kind() == PlaceKind.PAD && place.belongsTo() instanceof Owner.OfCup cup) {
            figures.put(cup.id(), shown.figure());
        }
        String fill = "";
        if (stuff.patterned()) {
            used.add(stuff);
            fill = " fill=\"url(#" + prefix + stuff.word() + ")\"";
        }
        for (Mark mark : handle.marks()) {
            if (mark instanceof Mark.Shape(Ink ink, Outline outline)) {
                shape(ink, outline, ink == Ink.FACE ? fill : "");
            } else {
                put(mark);
            }
        }
        token(handle, shown.standing());
        out.append(address == null ? "</g>\n" : "</a>\n");
    }

    private void labels(String name, List<Label> labels) {
        out.append("<g class=\"labels ").append(name).append("\">\n");
        for (Label label : labels) {
            if (label.far()) {
                out.append("<path class=\"leader\" d=\"M")
                        .append(Text.at(label.leader()))
                        .append('L');
                out.append(Text.at(label.centre())).append("\"/>");
            }
        }
        for (Label label : labels) {
            words("lbl", figures.getOrDefault(label.cup(), label.text()), label.centre());
        }
        out.append("</g>\n");
    }
}
