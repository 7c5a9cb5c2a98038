package hornwright.desk.drawing;

import hornwright.bench.archive.AsBuiltAt;
import hornwright.bench.archive.Course;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** The ruler for paper: black on white, the boards told apart by their patterns in grey. One unit is a tenth of a millimetre. */
public final class RulerPrint {
    private static final double UNITS = 10;
    private static final double BAND = 42;
    private static final double TALL = 44;
    private static final double BAND_HEIGHT = 118;
    private static final double AXIS_HEIGHT = 72;
    /** Room for half a mark or half a number beyond either end. */
    private static final double INSET = 45;

    private static final double PATTERN = 2.6;

    private final RulerScale scale;
    private final long here;
    private final double width;

    public RulerPrint(RulerScale scale, long here, double widthMm) {
        this.scale = scale;
        this.here = here;
        this.width = widthMm * UNITS;
    }

    /** The numbered edge, with this horn. */
    public Print axis() {
        StringBuilder out = new StringBuilder();
        List<PrintWord> words = new ArrayList<>();
        for (RulerScale.Tick tick : scale.ticks()) {
            double x = x(tick.serial());
            out.append(line(x, AXIS_HEIGHT, x, AXIS_HEIGHT - (tick.numbered() ? 22 : 11), 2));
            if (tick.numbered() && Math.abs(x - x(here)) > 90) {
                words.add(word(RulerScale.written(tick.serial()), x, AXIS_HEIGHT - 28, 25, PrintWord.Face.PLAIN));
            }
        }
        out.append(line(x(here), AXIS_HEIGHT - 30, x(here), AXIS_HEIGHT, 6));
        words.add(word(Long.toString(here), x(here), AXIS_HEIGHT - 36, 32, PrintWord.Face.STRONG));
        return print(out.toString(), AXIS_HEIGHT, words, "Serial numbers");
    }

    public Print band(Course course, String id, String says) {
        List<Scarf.Board> boards = Scarf.of(course, scale.shown()).boards();
        StringBuilder out = new StringBuilder(patterns(boards, id));
        boards.forEach(board -> out.append(board(board, id)));
        course.changes().forEach(change -> out.append(bracket(change)));
        course.marks().forEach(mark -> out.append(mark(course, mark)));
        out.append(line(x(here), 0, x(here), BAND_HEIGHT, 6));
        return print(out.toString(), BAND_HEIGHT, List.of(), says);
    }

    /** A sample of a material as the bands show it. */
    public static Print swatch(String material, boolean second, String id) {
        Stuff stuff = Stuff.of(material);
        String shapes = "<defs>" + pattern(stuff, second, id)
                + "</defs><rect x=\"1\" y=\"1\" width=\"58\" height=\"28\" stroke=\"#000000\" stroke-width=\"2\" fill=\"%s\"/>"
                        .formatted(fill(stuff, second, id));
        return new Print(shapes, "0 0 60 30", 6, 3, List.of(), material);
    }

    private static String patterns(List<Scarf.Board> boards, String id) {
        Set<Stuff> used = EnumSet.noneOf(Stuff.class);
        StringBuilder out = new StringBuilder("<defs>");
        for (Scarf.Board board : boards) {
            if (used.add(board.stuff()) || board.second()) {
                out.append(pattern(board.stuff(), board.second(), id));
            }
        }
        return out.append("</defs>").toString();
    }

    private static String pattern(Stuff stuff, boolean second, String id) {
        Stuff drawn = !stuff.patterned() && second ? Stuff.PLATE : stuff;
        String turned = second ? "rotate(45) scale(4.6)" : "scale(" + PATTERN + ")";
        return drawn.patterned()
                ? drawn.printPattern(name(stuff, second, id))
                        .replace("patternUnits=", "patternTransform=\"" + turned + "\" patternUnits=")
                : "";
    }

    private static String name(Stuff stuff, boolean second, String id) {
        return id + (second ? "-second-" : "-") + stuff.word();
    }

    private static String fill(Stuff stuff, boolean second, String id) {
        return stuff.patterned() || second ? "url(#" + name(stuff, second, id) + ")" : stuff.ground();
    }

    private String board(Scarf.Board board, String id) {
        StringBuilder out = new StringBuilder("<path d=\"M");
        board.upper().forEach(spot -> out.append(unit(spot)).append('L'));
        board.lower().reversed().forEach(spot -> out.append(unit(spot)).append('L'));
        out.setLength(out.length() - 1);
        return out.append("Z\" fill=\"")
                .append(fill(board.stuff(), board.second(), id))
                .append("\" stroke=\"#000000\" stroke-width=\"2\" stroke-linejoin=\"round\"/>")
                .toString();
    }

    private String unit(Spot spot) {
        return String.format(Locale.ROOT, "%.1f %.1f", x(spot.x()), BAND + spot.y() * TALL);
    }

    private String bracket(AsBuiltAt.ChangeOver change) {
        double from = x(change.between().from());
        double to = x(change.between().to());
        return String.format(
                Locale.ROOT,
                "<path d=\"M%.1f 93v12H%.1fv-12\" fill=\"none\" stroke=\"#000000\" stroke-width=\"3\"/>",
                from,
                to);
    }

    private String mark(Course course, Course.Mark mark) {
        double x = x(mark.serial());
        if (course.isAgainst(mark)) {
            return String.format(
                    Locale.ROOT,
                    "<path d=\"M%.1f 95l16 16m0 -16l-16 16\" fill=\"none\" stroke=\"#000000\" stroke-width=\"4\"/>",
                    x - 8);
        }
        return String.format(
                Locale.ROOT,
                "<path d=\"M%.1f 12h16l-8 22z\" fill=\"%s\" stroke=\"#000000\" stroke-width=\"2\" stroke-linejoin=\"round\"/>",
                x - 8,
                RulerMark.held(mark) ? "#000000" : "#ffffff");
    }

    private double x(long serial) {
        return x(scale.share(serial));
    }

    private double x(double share) {
        return INSET + share * (width - 2 * INSET);
    }

    private static String line(double x1, double y1, double x2, double y2, double thick) {
        return String.format(
                Locale.ROOT,
                "<path d=\"M%.1f %.1fL%.1f %.1f\" fill=\"none\" stroke=\"#000000\" stroke-width=\"%.1f\"/>",
                x1,
                y1,
                x2,
                y2,
                thick);
    }

    private static PrintWord word(String text, double x, double y, double size, PrintWord.Face face) {
        return new PrintWord(text, x / UNITS, y / UNITS, size / UNITS, PrintWord.Align.MIDDLE, face);
    }

    private Print print(String shapes, double height, List<PrintWord> words, String says) {
        return new Print(
                shapes,
                String.format(Locale.ROOT, "0 0 %.1f %.1f", width, height),
                width / UNITS,
                height / UNITS,
                words,
                says);
    }
}
