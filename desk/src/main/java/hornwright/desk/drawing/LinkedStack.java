package hornwright.desk.drawing;

import hornwright.bench.horn.Key;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Link;
import hornwright.desk.drawing.PrintWord.Align;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * The keys one finger works, side by side as one sees them from the hinge: each cup over its hole with the gap under it
 * magnified, a thin line where it comes to once the work is done, and between the keys the contacts with what is done there.
 */
public final class LinkedStack {
    /** Gaps are drawn a good hundred times as large as they are. */
    private static final double UNITS_PER_MM = 220;

    private static final double MOST_GAP = 0.3;
    private static final double COLUMN = 132;
    private static final double RIM_Y = 220;
    private static final double AXIS_Y = 74;
    private static final double TYPE = 13;
    private static final double PRINT_UNITS_PER_MM = 6.6;

    /**
     * One key.
     *
     * @param now gap under its cup, mm; null while nobody has felt
     * @param then gap once the work is done; null while that is not known
     * @param hasCup whether there is a cup to feel under
     */
    public record Column(
            Key key,
            boolean hasCup,
            @Nullable Double now,
            @Nullable Double then) {}

    /**
     * One contact between two of the keys.
     *
     * @param words what is done there, "take 0.08"; empty when it is left
     */
    public record Contact(Link link, String words) {}

    private final List<Column> columns;
    private final List<Contact> contacts;
    private final String says;
    private final List<Mark> marks = new ArrayList<>();

    private LinkedStack(List<Column> columns, List<Contact> contacts, String says) {
        this.columns = columns;
        this.contacts = contacts;
        this.says = says;
        marks.add(shape(Ink.STEEL, slab(width() / 2, AXIS_Y, width() - 16, 7, 3.5)));
        for (int i = 0; i < columns.size(); i++) {
            key(columns.get(i), middle(i), i == 0);
        }
        contacts.forEach(this::contact);
        scale();
    }

    /** @param columns the pressed key first */
    public static LinkedStack of(List<Column> columns, List<Contact> contacts, String says) {
        return new LinkedStack(List.copyOf(columns), List.copyOf(contacts), says);
    }

    /** What is drawn, in words, for who cannot see it. */
    public static String inWords(Keywork keywork, String press) {
        return "What " + keywork.keys().get(press).name().display() + " closes, gaps a hundred times as large";
    }

    public String screen(String prefix) {
        return new ScreenSvg(Showing.asBuilt(), prefix).figure("lever linked-stack", says, box(), marks);
    }

    public Print print() {
        PrintSvg print =
                new PrintSvg(Showing.asBuilt(), "linked-", box().bottom(), PRINT_UNITS_PER_MM, false, new Spot(0, 0));
        print.draw(marks);
        return print.print(width(), box().bottom(), says);
    }

    private Box box() {
        return new Box(0, 0, width(), RIM_Y + 62);
    }

    private double width() {
        return Math.max(2, columns.size()) * COLUMN + 24;
    }

    private static double middle(int column) {
        return 12 + (column + 0.5) * COLUMN;
    }

    private void key(Column column, double x, boolean pressed) {
        if (column.hasCup()) {
            hole(x);
            double gap = drawn(column.now() == null ? 0 : column.now());
            double pad = RIM_Y - gap;
            marks.add(shape(Ink.ARM, slab(x, (AXIS_Y + pad - 30) / 2, 9, pad - 30 - AXIS_Y, 3)));
            marks.add(shape(Ink.FACE, slab(x, pad - 8, 88, 16, 4)));
            marks.add(shape(Ink.RIM, slab(x, pad - 23, 94, 14, 5)));
            then(column, x);
            gap(column, x, gap);
        } else {
            marks.add(shape(Ink.ARM, slab(x, AXIS_Y + 28, 9, 56, 3)));
        }
        marks.add(shape(Ink.POST, new Outline.Circle(new Spot(x, AXIS_Y), 8)));
        if (pressed) {
            marks.add(shape(Ink.PEARL, new Outline.Circle(new Spot(x, AXIS_Y - 30), 13)));
            marks.add(shape(
                    Ink.AXIS,
                    new Outline.Path(
                            "M%s V%s m-5 -6 l5 6 l5 -6".formatted(Text.at(new Spot(x, 6)), Text.n(AXIS_Y - 46)))));
        }
        word(Mark.Type.NAME, column.key().name().display(), x, RIM_Y + 44, Align.MIDDLE);
    }

    private void hole(double x) {
        String walls = "M%s V%s M%s V%s"
                .formatted(
                        Text.at(new Spot(x - 42, RIM_Y)),
                        Text.n(RIM_Y + 24),
                        Text.at(new Spot(x + 42, RIM_Y)),
                        Text.n(RIM_Y + 24));
        marks.add(shape(Ink.BODY, new Outline.Path(walls)));
        marks.add(shape(
                Ink.DETAIL,
                new Outline.Path("M%s H%s".formatted(Text.at(new Spot(x - 56, RIM_Y + 24)), Text.n(x + 56)))));
    }

    private void then(Column column, double x) {
        Double then = column.then();
        if (then != null && column.now() != null && Math.abs(drawn(then) - drawn(column.now())) > 2) {
            double y = RIM_Y - drawn(then);
            marks.add(shape(Ink.GHOST, slab(x, y - 8, 88, 16, 4)));
        }
    }

    private void gap(Column column, double x, double gap) {
        Double now = column.now();
        if (now == null) {
            word(Mark.Type.FIGURE, "not felt", x, RIM_Y + 19, Align.MIDDLE);
            return;
        }
        String words = now > 0 ? String.format(Locale.ROOT, "%.2f", now) : "shut";
        word(Mark.Type.FIGURE, words, x, RIM_Y + 19, Align.MIDDLE);
        if (gap > 4) {
            marks.add(shape(
                    Ink.AXIS,
                    new Outline.Path("M%s V%s m-5 0 h10 m-5 0 V%s m-5 0 h10"
                            .formatted(Text.at(new Spot(x + 50, RIM_Y)), Text.n(RIM_Y - gap), Text.n(RIM_Y)))));
        }
    }

    /** A contact is a slip of cork under a bar from driver to follower; contacts of one driver lie above each other. */
    private void contact(Contact contact) {
        int from = column(contact.link().driver());
        int to = column(contact.link().follower());
        if (from < 0 || to < 0) {
            return;
        }
        double y = AXIS_Y + 20 + 22 * lane(contact);
        double left = Math.min(middle(from), middle(to));
        double right = Math.max(middle(from), middle(to));
        double x = to > from ? right - 12 : left + 12;
        marks.add(shape(Ink.LEADER, new Outline.Path("M%s H%s".formatted(Text.at(new Spot(left, y)), Text.n(right)))));
        marks.add(shape(Ink.GUARD_FOOT, slab(x, y + 4, 16, 7, 2)));
        if (!contact.words().isEmpty()) {
            double beside = middle(from) + (to > from ? COLUMN : -COLUMN) / 2;
            word(Mark.Type.NAME, contact.words(), beside, y - 4, Align.MIDDLE);
        }
    }

    private int lane(Contact contact) {
        return (int) contacts.stream()
                .takeWhile(other -> !other.equals(contact))
                .filter(other -> overlap(other, contact))
                .count();
    }

    private boolean overlap(Contact one, Contact other) {
        return one.link().driver().equals(other.link().driver())
                || one.link().follower().equals(other.link().follower())
                || one.link().driver().equals(other.link().follower());
    }

    private int column(String key) {
        for (int i = 0; i < columns.size(); i++) {
            if (columns.get(i).key().id().equals(key)) {
                return i;
            }
        }
        return -1;
    }

    private void scale() {
        double x = width() - 34;
        marks.add(shape(
                Ink.DETAIL,
                new Outline.Path(
                        "M%s h6 m-6 0 v%s h6".formatted(Text.at(new Spot(x, 8)), Text.n(0.1 * UNITS_PER_MM)))));
        word(Mark.Type.FIGURE, "0.1 mm", x - 6, 8 + 0.05 * UNITS_PER_MM + 4, Align.END);
    }

    private static double drawn(double gapMm) {
        return UNITS_PER_MM * Math.max(0, Math.min(MOST_GAP, gapMm));
    }

    private void word(Mark.Type type, String text, double x, double y, Align align) {
        marks.add(new Mark.Words(type, text, new Spot(x, y), TYPE, align));
    }

    private static Mark shape(Ink ink, Outline outline) {
        return new Mark.Shape(ink, outline);
    }

    private static Outline slab(double x, double y, double width, double height, double corner) {
        return new Outline.Slab(new Spot(x, y), width, height, corner, 0);
    }
}
