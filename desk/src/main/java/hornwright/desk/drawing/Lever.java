package hornwright.desk.drawing;

import hornwright.bench.horn.Key;
import hornwright.bench.horn.Keywork;
import hornwright.desk.drawing.Callouts.Note;
import hornwright.desk.drawing.Callouts.Placed;
import hornwright.desk.drawing.PrintWord.Align;
import java.util.ArrayList;
import java.util.List;

/**
 * A key from the side at true scale, shut, with a thin line where it stands open: axis, arms, foot, contacts, pad and rim,
 * and the number of each beside it. On paper a millimetre is a millimetre.
 */
public final class Lever {
    /** A CSS pixel is 1/96 inch, so that the drawing is true on a screen that keeps to it. */
    private static final double UNITS_PER_MM = 96 / 25.4;

    private static final double LINE = 15;
    private static final double TYPE = 12.5;
    /** Width of a letter as a share of the type size; no face used is wider on average. */
    private static final double LETTER = 0.6;

    private static final double LEADER = 24;
    private static final double EDGE = 8;

    private final Key key;
    private final List<Mark> marks;
    private final List<Placed> left;
    private final List<Placed> right;
    private final double wide;
    private final Box box;

    private Lever(Keywork keywork, Key key) {
        this.key = key;
        LeverFrame frame = LeverFrame.of(keywork, key);
        LeverFigure figure = new LeverFigure(keywork, key, frame, UNITS_PER_MM);
        this.marks = figure.draw();
        LeverNotes notes = new LeverNotes(keywork, key, frame, figure);
        Box drawn = Extent.of(marks);
        this.wide = Math.max(width(notes.left()), width(notes.right()));
        double need = Math.max(height(notes.left()), height(notes.right()));
        double spare = Math.max(0, need - (drawn.bottom() - drawn.top())) / 2;
        this.box = new Box(
                drawn.left() - wide - LEADER,
                drawn.top() - spare - EDGE,
                drawn.right() + wide + LEADER,
                drawn.bottom() + spare + EDGE + 26);
        this.left = Callouts.column(notes.left(), box.top() + EDGE, box.bottom() - EDGE - 16, LINE, 8);
        this.right = Callouts.column(notes.right(), box.top() + EDGE, box.bottom() - EDGE - 16, LINE, 8);
    }

    public static Lever of(Keywork keywork, Key key) {
        return new Lever(keywork, key);
    }

    private static double height(List<Note> notes) {
        return notes.stream()
                .mapToDouble(note -> note.lines().size() * LINE + 8)
                .sum();
    }

    private static double width(List<Note> notes) {
        return notes.stream()
                .flatMap(note -> note.lines().stream())
                .mapToDouble(line -> line.length() * TYPE * LETTER + EDGE)
                .max()
                .orElse(0);
    }

    private String says() {
        return key.name().display() + " key from the side, at true scale";
    }

    /** The drawing for a page. */
    public String screen(Showing showing) {
        List<Mark> all = new ArrayList<>(marks);
        notes((ink, outline) -> all.add(new Mark.Shape(ink, outline)), all::add);
        return new ScreenSvg(showing, "lever-").figure("lever", says(), box, all);
    }

    /** The drawing for paper at true scale. */
    public Print print(Showing showing) {
        PrintSvg print = new PrintSvg(
                showing, "lever-", box.bottom() - box.top(), UNITS_PER_MM, false, new Spot(-box.left(), -box.top()));
        List<Mark> all = new ArrayList<>(marks);
        notes((ink, outline) -> all.add(new Mark.Shape(ink, outline)), all::add);
        print.draw(all);
        return print.print(box.right() - box.left(), box.bottom() - box.top(), says());
    }

    private interface Shapes {
        void add(Ink ink, Outline outline);
    }

    private interface Said {
        void add(Mark.Words words);
    }

    private void notes(Shapes shapes, Said said) {
        Spot from = new Spot((box.left() + box.right()) / 2 - 5 * UNITS_PER_MM, box.bottom() - 8);
        Spot to = from.plus(10 * UNITS_PER_MM, 0);
        shapes.add(
                Ink.AXIS,
                new Outline.Path(
                        "M" + Text.at(from.plus(0, -4)) + "V" + Text.n(from.y()) + "H" + Text.n(to.x()) + "v-4"));
        said.add(new Mark.Words(Mark.Type.FIGURE, "10 mm", to.plus(6, 2), TYPE, Align.START));
        left.forEach(placed -> note(placed, box.left() + wide, Align.END, shapes, said));
        right.forEach(placed -> note(placed, box.right() - wide, Align.START, shapes, said));
    }

    private static void note(Placed placed, double x, Align align, Shapes shapes, Said said) {
        Spot end = new Spot(x + (align == Align.END ? 4 : -4), placed.top() + LINE * 0.5);
        Spot elbow = end.plus(align == Align.END ? 14 : -14, 0);
        shapes.add(
                Ink.LEADER,
                new Outline.Path("M" + Text.at(end) + "L" + Text.at(elbow) + "L"
                        + Text.at(placed.note().at())));
        double base = placed.top() + TYPE * 0.85;
        Mark.Type type = Mark.Type.NAME;
        for (String line : placed.note().lines()) {
            said.add(new Mark.Words(type, line, new Spot(x, base), TYPE, align));
            type = Mark.Type.FIGURE;
            base += LINE;
        }
    }
}
