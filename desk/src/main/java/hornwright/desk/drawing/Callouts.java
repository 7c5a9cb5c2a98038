package hornwright.desk.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Notes in a column beside a drawing, each with a line to what it speaks of. They keep the order of what they point at, so
 * that no two lines cross, and stand as near to its height as their neighbours let them.
 */
final class Callouts {
    /** What is pointed at and what is said of it, line by line; the first line is its name. */
    record Note(Spot at, List<String> lines) {
        Note {
            lines = List.copyOf(lines);
        }
    }

    /** A note with the top of its first line. */
    record Placed(Note note, double top) {}

    private Callouts() {}

    /**
     * @param lineHeight of one line of a note
     * @param between notes, at least
     */
    static List<Placed> column(List<Note> notes, double top, double bottom, double lineHeight, double between) {
        List<Note> sorted = notes.stream()
                .sorted(Comparator.comparingDouble(note -> note.at().y()))
                .toList();
        double[] tops = new double[sorted.size()];
        double floor = top;
        for (int i = 0; i < tops.length; i++) {
            double height = sorted.get(i).lines().size() * lineHeight;
            tops[i] = Math.max(floor, sorted.get(i).at().y() - height / 2);
            floor = tops[i] + height + between;
        }
        double ceiling = bottom;
        for (int i = tops.length - 1; i >= 0; i--) {
            double height = sorted.get(i).lines().size() * lineHeight;
            tops[i] = Math.min(tops[i], ceiling - height);
            ceiling = tops[i] - between;
        }
        List<Placed> placed = new ArrayList<>();
        for (int i = 0; i < tops.length; i++) {
            placed.add(new Placed(sorted.get(i), tops[i]));
        }
        return placed;
    }
}
