package hornwright.desk.drawing;

import hornwright.desk.drawing.PrintWord.Align;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Lines over two axes in the look of the drawings: for a page, and black on white for paper. */
public final class Graph {
    private static final double WIDTH = 380;
    private static final double HEIGHT = 220;
    private static final double LEFT = 44;
    private static final double RIGHT = 366;
    private static final double TOP = 28;
    private static final double BOTTOM = 176;
    private static final double TYPE = 12.5;

    /** On paper a graph is so wide, mm. */
    private static final double PRINT_MM = 76;

    /**
     * One way of measuring.
     *
     * @param label with its unit: "ms after letting go"
     */
    public record Axis(String label, double from, double to) {
        public Axis {
            if (!(to > from)) {
                throw new IllegalArgumentException("an axis leads somewhere, not from " + from + " to " + to);
            }
        }

        /** One that ends at a round number at or beyond what it must hold. */
        public static Axis holding(String label, double most) {
            double step = step(most);
            return new Axis(label, 0, Math.max(step, Math.ceil(most / step - 1e-9) * step));
        }

        /** 1, 2 or 5 times a power of ten, so that three to seven steps fill the way. */
        private static double step(double most) {
            double power = Math.pow(10, Math.floor(Math.log10(Math.max(most, 1e-9) / 3)));
            for (double times : new double[] {1, 2, 5}) {
                if (most / (times * power) <= 6) {
                    return times * power;
                }
            }
            return 10 * power;
        }

        List<Double> marks() {
            double step = step(to - from);
            List<Double> marks = new ArrayList<>();
            for (double at = Math.ceil(from / step - 1e-9) * step; at <= to + 1e-9 * step; at += step) {
                marks.add(at);
            }
            return marks;
        }
    }

    /** A point of a line, in the units of the axes. */
    public record At(double x, double y) {}

    private final String says;
    private final Axis across;
    private final Axis up;
    private final List<Mark> behind = new ArrayList<>();
    private final List<Mark> lines = new ArrayList<>();

    /** @param says what is drawn, for who cannot see it */
    public Graph(String says, Axis across, Axis up) {
        this.says = says;
        this.across = across;
        this.up = up;
    }

    /** The line the graph is about. */
    public Graph curve(List<At> points) {
        lines.add(new Mark.Shape(Ink.CURVE, path(points)));
        return this;
    }

    /** A line to compare with. */
    public Graph beside(List<At> points) {
        lines.add(new Mark.Shape(Ink.OTHER_CURVE, path(points)));
        return this;
    }

    /** A level, with its name at the right end. */
    public Graph level(double y, String name) {
        behind.add(new Mark.Shape(
                Ink.GHOST, new Outline.Path("M" + Text.at(new Spot(LEFT, y(y))) + "H" + Text.n(RIGHT))));
        behind.add(new Mark.Words(Mark.Type.FIGURE, name, new Spot(RIGHT, y(y) - 4), TYPE, Align.END));
        return this;
    }

    /** What is wanted: a band of the upright axis. */
    public Graph wanted(double low, double high) {
        double top = y(high);
        double bottom = y(low);
        behind.addFirst(new Mark.Shape(
                Ink.WANTED,
                new Outline.Slab(new Spot((LEFT + RIGHT) / 2, (top + bottom) / 2), RIGHT - LEFT, bottom - top, 0, 0)));
        return this;
    }

    /** A spot with its name. */
    public Graph spot(double x, double y, String name) {
        Spot at = new Spot(x(x), y(y));
        boolean end = at.x() > (LEFT + RIGHT) / 2;
        lines.add(new Mark.Shape(Ink.PEARL, new Outline.Circle(at, 5)));
        lines.add(new Mark.Words(Mark.Type.NAME, name, at.plus(end ? -9 : 9, -7), TYPE, end ? Align.END : Align.START));
        return this;
    }

    /** For a page. */
    public String screen() {
        return new ScreenSvg(Showing.asBuilt(), "graph-").figure("graph", says, box(), marks());
    }

    /** For paper. */
    public Print print() {
        PrintSvg print = new PrintSvg(Showing.asBuilt(), "graph-", HEIGHT, WIDTH / PRINT_MM, false, new Spot(0, 0));
        print.draw(marks());
        return print.print(WIDTH, HEIGHT, says);
    }

    private static Box box() {
        return new Box(0, 0, WIDTH, HEIGHT);
    }

    private List<Mark> marks() {
        List<Mark> all = new ArrayList<>(behind);
        all.add(new Mark.Shape(
                Ink.AXIS,
                new Outline.Path("M" + Text.at(new Spot(LEFT, TOP)) + "V" + Text.n(BOTTOM) + "H" + Text.n(RIGHT))));
        across.marks().forEach(at -> {
            tick(all, new Spot(x(at), BOTTOM), 0, 4);
            all.add(Mark.Words.centred(Mark.Type.FIGURE, plain(at), new Spot(x(at), BOTTOM + 18), TYPE));
        });
        up.marks().forEach(at -> {
            tick(all, new Spot(LEFT, y(at)), -4, 0);
            all.add(new Mark.Words(Mark.Type.FIGURE, plain(at), new Spot(LEFT - 8, y(at) + 4), TYPE, Align.END));
        });
        all.add(new Mark.Words(Mark.Type.FIGURE, across.label(), new Spot(RIGHT, BOTTOM + 36), TYPE, Align.END));
        all.add(new Mark.Words(Mark.Type.FIGURE, up.label(), new Spot(4, TOP - 14), TYPE, Align.START));
        all.addAll(lines);
        return all;
    }

    private static void tick(List<Mark> all, Spot from, double dx, double dy) {
        all.add(new Mark.Shape(Ink.AXIS, new Outline.Path("M" + Text.at(from) + "L" + Text.at(from.plus(dx, dy)))));
    }

    private static String plain(double at) {
        return new BigDecimal(String.format(java.util.Locale.ROOT, "%.3f", at + 0.0))
                .stripTrailingZeros()
                .toPlainString();
    }

    private Outline path(List<At> points) {
        StringBuilder d = new StringBuilder();
        double lastX = Double.NaN;
        double lastY = Double.NaN;
        for (At point : points) {
            double x = x(Math.clamp(point.x(), across.from(), across.to()));
            double y = y(Math.clamp(point.y(), up.from(), up.to()));
            if (!(Math.hypot(x - lastX, y - lastY) < 0.7)) {
                d.append(d.isEmpty() ? "M" : "L").append(Text.at(new Spot(x, y)));
                lastX = x;
                lastY = y;
            }
        }
        return new Outline.Path(d.toString());
    }

    private double x(double value) {
        return LEFT + (value - across.from()) / (across.to() - across.from()) * (RIGHT - LEFT);
    }

    private double y(double value) {
        return BOTTOM - (value - up.from()) / (up.to() - up.from()) * (BOTTOM - TOP);
    }
}
