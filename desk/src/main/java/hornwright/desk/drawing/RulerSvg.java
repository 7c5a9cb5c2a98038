package hornwright.desk.drawing;

import hornwright.bench.archive.AsBuiltAt;
import hornwright.bench.archive.Course;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;

/**
 * The ruler for the screen: as wide as it is given room for, while marks, patterns and type keep their size. Places along
 * it are percentages; the boards of a band are cut out of the whole width by clip paths in shares of it.
 */
public final class RulerSvg {
    private static final int BAND = 22;
    private static final int TALL = 22;

    private final RulerScale scale;
    private final long here;

    public RulerSvg(RulerScale scale, long here) {
        this.scale = scale;
        this.here = here;
    }

    /** The patterns the bands refer to, once a page. */
    public static String patterns() {
        StringBuilder out = new StringBuilder("<svg class=\"hidden-text\" aria-hidden=\"true\"><defs>");
        for (Stuff stuff : Stuff.values()) {
            if (stuff.patterned()) {
                out.append(stuff.screenPattern("ruler-" + stuff.word()));
                out.append(wider(stuff.screenPattern("ruler-second-" + stuff.word())));
            }
        }
        return out.append("</defs></svg>").toString();
    }

    private static String wider(String pattern) {
        return pattern.replace(
                "patternUnits=\"userSpaceOnUse\"",
                "patternUnits=\"userSpaceOnUse\" patternTransform=\"rotate(45) scale(1.9)\"");
    }

    /** A sample of a material as the bands show it. */
    public static String swatch(String material, boolean second) {
        return "<svg class=\"chip\" width=\"22\" height=\"16\" aria-hidden=\"true\"><g class=\"edge\"><rect x=\".5\" y=\".5\" width=\"21\" height=\"15\" %s/></g></svg>"
                .formatted(fill(Stuff.of(material), second));
    }

    /** Which materials of a band are of a stuff that came before, and so are drawn with the wider pattern. */
    public static Set<String> seconds(Course course, RulerScale scale) {
        Set<String> seconds = new TreeSet<>();
        if (!course.steps().isEmpty()) {
            Scarf.of(course, scale.shown()).boards().stream()
                    .filter(Scarf.Board::second)
                    .forEach(board -> seconds.add(board.material()));
        }
        return seconds;
    }

    /** The numbered edge of the ruler, with this horn. */
    public String axis() {
        StringBuilder out = new StringBuilder("<svg class=\"strip r-scale\" height=\"48\" aria-hidden=\"true\">");
        int number = 0;
        for (RulerScale.Tick tick : scale.ticks()) {
            boolean covered = Math.abs(scale.share(tick.serial()) - scale.share(here)) < 0.03;
            out.append(at(tick.serial()))
                    .append("<path class=\"tick\" d=\"M0 48v")
                    .append(tick.numbered() ? "-14" : "-7")
                    .append("\"/>");
            if (tick.numbered()) {
                String sort = (covered ? "covered" : number % 3 == 0 ? "third" : "other");
                out.append("<text class=\"")
                        .append(sort)
                        .append(end(tick.serial()))
                        .append("\" y=\"30\">")
                        .append(RulerScale.written(tick.serial()))
                        .append("</text>");
                number++;
            }
            out.append("</svg>");
        }
        return out.append(at(here))
                .append("<path class=\"here\" d=\"M0 18V48\"/><text class=\"here-word")
                .append(end(here))
                .append("\" y=\"13\">")
                .append(here)
                .append("</text></svg></svg>")
                .toString();
    }

    private String end(long serial) {
        double share = scale.share(serial);
        return share < 0.04 ? " at-start" : share > 0.96 ? " at-end" : "";
    }

    /** One band with its marks. Ids begin with {@code id}. */
    public String band(Course course, String id, String says) {
        StringBuilder out =
                new StringBuilder("<svg class=\"strip r-band\" height=\"68\" role=\"img\" aria-label=\"%s\">"
                        .formatted(Text.escaped(says)));
        List<Scarf.Board> boards = Scarf.of(course, scale.shown()).boards();
        for (int i = 0; i < boards.size(); i++) {
            board(out, boards.get(i), id + "-" + i);
        }
        seams(out, boards);
        course.changes().forEach(change -> bracket(out, change));
        course.marks().forEach(mark -> mark(out, course, mark));
        return out.append(at(here))
                .append("<path class=\"here\" d=\"M0 -90V160\"/></svg></svg>")
                .toString();
    }

    private static void board(StringBuilder out, Scarf.Board board, String id) {
        out.append("<clipPath id=\"%s\" clipPathUnits=\"objectBoundingBox\"><path d=\"M".formatted(id));
        board.upper().forEach(spot -> out.append(unit(spot)).append('L'));
        board.lower().reversed().forEach(spot -> out.append(unit(spot)).append('L'));
        out.setLength(out.length() - 1);
        out.append("Z\"/></clipPath><rect x=\"0\" y=\"%d\" width=\"100%%\" height=\"%d\" clip-path=\"url(#%s)\" %s/>"
                .formatted(BAND, TALL, id, fill(board.stuff(), board.second())));
    }

    /** The joints between boards and the outline of the whole, in lines of one width at any size. */
    private static void seams(StringBuilder out, List<Scarf.Board> boards) {
        out.append("<svg y=\"%d\" width=\"100%%\" height=\"%d\" viewBox=\"0 0 1 1\" preserveAspectRatio=\"none\">"
                .formatted(BAND, TALL));
        for (int i = 0; i < boards.size(); i++) {
            if (i == 0) {
                seam(out, boards.getFirst().upper());
            }
            seam(out, boards.get(i).lower());
        }
        out.append("</svg>");
    }

    private static void seam(StringBuilder out, List<Spot> edge) {
        out.append("<path class=\"seam\" vector-effect=\"non-scaling-stroke\" d=\"M");
        edge.forEach(spot -> out.append(unit(spot)).append('L'));
        out.setLength(out.length() - 1);
        out.append("\"/>");
    }

    private void bracket(StringBuilder out, AsBuiltAt.ChangeOver change) {
        double from = scale.share(change.between().from());
        double to = scale.share(change.between().to());
        out.append(
                        "<svg x=\"%s\" y=\"48\" width=\"%s\" height=\"10\"><path class=\"change\" vector-effect=\"non-scaling-stroke\" d=\"M.7 0v6\"/>"
                                .formatted(percent(from), percent(to - from)))
                .append("<rect class=\"change-line\" y=\"5.3\" width=\"100%\" height=\"1.4\"/>")
                .append(
                        "<rect class=\"change-line\" x=\"100%\" y=\"0\" width=\"1.4\" height=\"6.7\" transform=\"translate(-1.4)\"/></svg>");
    }

    private void mark(StringBuilder out, Course course, Course.Mark mark) {
        boolean against = course.isAgainst(mark);
        out.append(at(mark.serial()));
        out.append(
                against
                        ? "<path class=\"against\" d=\"M-4 58l8 8m0 -8l-8 8\"/>"
                        : "<path class=\"%s\" d=\"M-4.2 7h8.4l-4.2 12z\"/>"
                                .formatted(RulerMark.held(mark) ? "held" : "weak"));
        out.append("</svg>");
    }

    private String at(long serial) {
        return "<svg x=\"" + percent(scale.share(serial)) + "\" overflow=\"visible\">";
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.2f%%", 100 * share);
    }

    private static String unit(Spot spot) {
        return String.format(Locale.ROOT, "%.4f %.4f", spot.x(), spot.y());
    }

    private static String fill(Stuff stuff, boolean second) {
        if (stuff.patterned()) {
            return "fill=\"url(#ruler-" + (second ? "second-" : "") + stuff.word() + ")\"";
        }
        return second ? "fill=\"url(#ruler-second-plate)\"" : "class=\"b-" + stuff.word() + "\"";
    }
}
