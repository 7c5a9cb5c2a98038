package hornwright.desk.drawing;

import hornwright.bench.horn.Cup;
import hornwright.desk.drawing.Callouts.Note;
import hornwright.desk.drawing.Callouts.Placed;
import hornwright.desk.drawing.PrintWord.Align;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/** The unrolled horn standing on a page, a note for every cup in the margins beside it. */
public final class PadMap {
    private static final double LINE = 16.5;
    private static final double TYPE = 14;
    private static final double MARGIN = 250;

    private PadMap() {}

    /**
     * @param notes what is said of a cup, line by line, its name first
     * @param widthMm of the whole print; the height follows
     */
    public static Print of(UnrolledHorn horn, Showing showing, Function<Cup, List<String>> notes, double widthMm) {
        double width = Sheet.HEIGHT + 2 * MARGIN;
        double unitsPerMm = width / widthMm;
        PrintSvg print = new PrintSvg(showing, "map-", Sheet.HEIGHT, unitsPerMm, true, new Spot(MARGIN, 0));
        print.draw(horn.marks());
        List<Cup> left = new ArrayList<>();
        List<Cup> right = new ArrayList<>();
        share(horn, print, left, right);
        column(horn, print, left, notes, true, width);
        column(horn, print, right, notes, false, width);
        return print.print(width, Sheet.WIDTH, "The horn unrolled, neck at the top, seen from in front");
    }

    /** Each side takes the cups nearer to it, and the stacks along the middle go where there is room. */
    private static void share(UnrolledHorn horn, PrintSvg print, List<Cup> left, List<Cup> right) {
        List<Cup> byX = horn.keywork().cups().list().stream()
                .sorted(Comparator.comparingDouble(
                        cup -> print.turned(horn.cup(cup)).x()))
                .toList();
        int half = (byX.size() + 1) / 2;
        left.addAll(byX.subList(0, half));
        right.addAll(byX.subList(half, byX.size()));
    }

    private static void column(
            UnrolledHorn horn,
            PrintSvg print,
            List<Cup> cups,
            Function<Cup, List<String>> notes,
            boolean left,
            double width) {
        List<Note> wanted = cups.stream()
                .map(cup -> new Note(edge(horn, print, cup, left), notes.apply(cup)))
                .toList();
        double x = left ? 150 : width - 150;
        for (Placed placed : Callouts.column(wanted, 8, Sheet.WIDTH - 8, LINE, 12)) {
            Spot end = new Spot(x + (left ? 4 : -4), placed.top() + LINE * 0.5);
            Spot elbow = new Spot(left ? MARGIN - 40 : width - MARGIN + 40, end.y());
            print.add(
                    Ink.LEADER,
                    new Outline.Path("M" + Text.at(end) + "L" + Text.at(elbow) + "L"
                            + Text.at(placed.note().at())));
            double base = placed.top() + TYPE * 0.9;
            Mark.Type type = Mark.Type.NAME;
            for (String line : placed.note().lines()) {
                print.say(type, line, new Spot(x, base), TYPE, left ? Align.END : Align.START);
                type = Mark.Type.FIGURE;
                base += LINE;
            }
        }
    }

    /** The edge of a cup on the side of its note. */
    private static Spot edge(UnrolledHorn horn, PrintSvg print, Cup cup, boolean left) {
        return print.turned(horn.cup(cup)).plus((left ? -1 : 1) * horn.radius(cup), 0);
    }
}
