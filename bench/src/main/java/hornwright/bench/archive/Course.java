package hornwright.bench.archive;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How one place went along the serial numbers: who looked where and saw what, and what was likeliest from horn to horn.
 *
 * @param marks one for each look, ascending by serial
 * @param steps the chance of each material at each serial looked at and at both ends of what is shown; between two
 *     neighbouring steps it is the straight line, exactly
 * @param changes where a change-over lies, ascending
 * @param habits times in which the works used more than one material side by side, ascending
 */
public record Course(
        String place, List<Mark> marks, List<Step> steps, List<AsBuiltAt.ChangeOver> changes, List<Habit> habits) {
    public Course {
        marks = List.copyOf(marks);
        steps = List.copyOf(steps);
        changes = List.copyOf(changes);
        habits = List.copyOf(habits);
    }

    /** One look at one horn. */
    public record Mark(String evidence, String witness, long serial, String material, Kind kind, int strength) {
        private boolean isLike(Mark other) {
            return witness.equals(other.witness)
                    && material.equals(other.material)
                    && kind == other.kind
                    && strength == other.strength;
        }
    }

    /** The chance of each material at one serial; in the order of their names. */
    public record Step(long serial, Map<String, Double> chances) {
        public Step {
            chances = Collections.unmodifiableMap(new LinkedHashMap<>(chances));
        }

        public double of(String material) {
            return chances.getOrDefault(material, 0.0);
        }

        /** The likeliest material. */
        public String likeliest() {
            return PlaceArchive.mostProbable(chances);
        }
    }

    /** Whether a look shows another material than is likeliest at its own serial, and no habit of the works explains it. */
    public boolean isAgainst(Mark mark) {
        boolean explained = habits.stream().anyMatch(habit -> habit.explains(mark.serial(), mark.material()));
        return !explained
                && steps.stream()
                        .filter(step -> step.serial() == mark.serial())
                        .anyMatch(step -> !step.likeliest().equals(mark.material()));
    }

    /** Whether the same was seen on the same horns in the same way, so that all that follows is the same too. */
    public boolean isLike(Course other) {
        if (marks.size() != other.marks.size()) {
            return false;
        }
        for (int i = 0; i < marks.size(); i++) {
            if (!marks.get(i).isLike(other.marks.get(i))) {
                return false;
            }
        }
        return true;
    }

    /** Materials in the order in which they were the likeliest, from the lowest serial up, then the rest. */
    public List<String> materials() {
        LinkedHashMap<String, Boolean> inOrder = new LinkedHashMap<>();
        steps.forEach(step -> inOrder.put(step.likeliest(), true));
        steps.forEach(step -> step.chances().keySet().forEach(name -> inOrder.putIfAbsent(name, true)));
        return List.copyOf(inOrder.keySet());
    }
}
