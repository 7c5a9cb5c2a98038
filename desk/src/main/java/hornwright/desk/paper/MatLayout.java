package hornwright.desk.paper;

import java.util.ArrayList;
import java.util.List;

/**
 * Where the discs of the mat stand: in rows, in the order given, left to right and down the sheet, so that keys laid on
 * them stay in the order they came off. Millimetres from the upper left corner of the sheet.
 */
public final class MatLayout {
    static final double WIDTH = 190;
    static final double HEIGHT = 254;
    private static final double TOP = 22;
    private static final double BOTTOM = 232;
    private static final double BETWEEN = 4;
    private static final double WORDS = 10;
    private static final double GROUP = 5;
    /** Room the words under a small disc need. */
    private static final double LEAST_WIDTH = 25;

    /** A disc and its centre. */
    public record Standing(MatDisc disc, double x, double y) {
        public double wordsY() {
            return y + disc.diameterMm() / 2 + 4;
        }
    }

    /** A line under neighbours that come off together. */
    public record Bracket(String group, double from, double to, double y) {
        public double middle() {
            return (from + to) / 2;
        }
    }

    /** One sheet. */
    public record Sheet(List<Standing> discs, List<Bracket> brackets) {}

    private final List<Sheet> sheets = new ArrayList<>();
    private List<Standing> discs = new ArrayList<>();
    private List<Bracket> brackets = new ArrayList<>();
    private double y = TOP;

    private MatLayout() {}

    static List<Sheet> of(List<MatDisc> inOrder) {
        MatLayout layout = new MatLayout();
        List<MatDisc> row = new ArrayList<>();
        double width = 0;
        for (MatDisc disc : inOrder) {
            double needed = widthOf(disc) + BETWEEN;
            if (width + needed > WIDTH) {
                layout.place(row);
                row = new ArrayList<>();
                width = 0;
            }
            row.add(disc);
            width += needed;
        }
        layout.place(row);
        layout.turnSheet();
        return List.copyOf(layout.sheets);
    }

    private static double widthOf(MatDisc disc) {
        return Math.max(disc.diameterMm(), LEAST_WIDTH);
    }

    private void place(List<MatDisc> row) {
        if (row.isEmpty()) {
            return;
        }
        double tallest = row.stream().mapToDouble(MatDisc::diameterMm).max().orElseThrow();
        if (y + tallest + WORDS + GROUP > BOTTOM) {
            turnSheet();
        }
        double spare = WIDTH - row.stream().mapToDouble(MatLayout::widthOf).sum();
        double between = Math.min(spare / row.size(), 12);
        double x = between / 2;
        List<Standing> placed = new ArrayList<>();
        for (MatDisc disc : row) {
            placed.add(new Standing(disc, x + widthOf(disc) / 2, y + tallest - disc.diameterMm() / 2));
            x += widthOf(disc) + between;
        }
        discs.addAll(placed);
        bracket(placed, y + tallest + WORDS + 1);
        y += tallest + WORDS + GROUP + BETWEEN;
    }

    private void bracket(List<Standing> placed, double at) {
        int start = 0;
        for (int i = 1; i <= placed.size(); i++) {
            boolean ends = i == placed.size()
                    || !placed.get(i)
                            .disc()
                            .group()
                            .equals(placed.get(start).disc().group());
            if (ends) {
                Standing first = placed.get(start);
                Standing last = placed.get(i - 1);
                brackets.add(new Bracket(
                        first.disc().group(),
                        first.x() - widthOf(first.disc()) / 2 + 1,
                        last.x() + widthOf(last.disc()) / 2 - 1,
                        at));
                start = i;
            }
        }
    }

    private void turnSheet() {
        if (!discs.isEmpty()) {
            sheets.add(new Sheet(List.copyOf(discs), List.copyOf(brackets)));
        }
        discs = new ArrayList<>();
        brackets = new ArrayList<>();
        y = TOP;
    }
}
