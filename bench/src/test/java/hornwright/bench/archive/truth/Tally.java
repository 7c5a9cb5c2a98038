package hornwright.bench.archive.truth;

import hornwright.bench.archive.AsBuiltAt;
import hornwright.bench.archive.Course;
import hornwright.bench.archive.truth.Factory.Habit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Everything the archive stated of invented factories, and whether it was so. */
final class Tally {
    /** One statement of the likeliest material. */
    private record Stated(Habit habit, double probability, boolean so, double brier, double nearestBrier) {}

    private record Interval(Habit habit, double stated, boolean covers) {}

    private final List<Stated> stated = new ArrayList<>();
    private final List<Interval> intervals = new ArrayList<>();
    /** Archives of each kind, and those in which the archive says that the works mixed. */
    private final Map<Habit, Integer> asked = new EnumMap<>(Habit.class);

    private final Map<Habit, Integer> calledMixing = new EnumMap<>(Habit.class);

    void state(Factory factory, AsBuiltAt said, String made, String nearest) {
        double brier = 0;
        for (String material : Factory.MATERIALS) {
            double p = said.probabilities().getOrDefault(material, 0.0);
            brier += Math.pow(p - (material.equals(made) ? 1 : 0), 2);
        }
        boolean so = made.equals(said.material());
        stated.add(new Stated(factory.habit(), said.probability(), so, brier, nearest.equals(made) ? 0 : 2));
    }

    /** Change-overs of factories that change at one serial, and whether a habit of mixing was seen. */
    void follow(Factory factory, Course course) {
        if (!factory.sharpChanges().isEmpty()) {
            for (AsBuiltAt.ChangeOver change : course.changes()) {
                boolean covers = factory.sharpChanges().stream()
                        .anyMatch(at -> at > change.between().from()
                                && at <= change.between().to());
                intervals.add(new Interval(factory.habit(), change.probability(), covers));
            }
        }
        asked.merge(factory.habit(), 1, Integer::sum);
        calledMixing.merge(factory.habit(), course.habits().isEmpty() ? 0 : 1, Integer::sum);
    }

    double brier() {
        return stated.stream().mapToDouble(Stated::brier).average().orElseThrow();
    }

    double nearestBrier() {
        return stated.stream().mapToDouble(Stated::nearestBrier).average().orElseThrow();
    }

    double covered() {
        return covered(intervals);
    }

    private static double covered(List<Interval> some) {
        return some.stream().filter(Interval::covers).count() / (double) some.size();
    }

    /** Share of these archives in which the archive says that the works mixed. */
    double calledMixing(Habit... habits) {
        return sum(calledMixing, habits) / (double) sum(asked, habits);
    }

    private static int sum(Map<Habit, Integer> counts, Habit... habits) {
        return Arrays.stream(habits)
                .mapToInt(habit -> counts.getOrDefault(habit, 0))
                .sum();
    }

    /** How much oftener than it is so, the likeliest material is stated with a probability in this range. */
    double tooSure(double from, double to) {
        List<Stated> bin = among(from, to);
        return meanStated(bin) - so(bin);
    }

    private List<Stated> among(double from, double to) {
        return stated.stream()
                .filter(s -> s.probability() >= from && s.probability() < to)
                .toList();
    }

    private static double so(List<Stated> bin) {
        return bin.stream().filter(Stated::so).count() / (double) bin.size();
    }

    private static double meanStated(List<Stated> bin) {
        return bin.stream().mapToDouble(Stated::probability).average().orElse(0);
    }

    void print() {
        for (int tenth = 3; tenth < 10; tenth++) {
            List<Stated> bin = among(tenth / 10.0, tenth == 9 ? 2 : (tenth + 1) / 10.0);
            System.out.printf("stated %.2f, so %.2f, n %d%n", meanStated(bin), so(bin), bin.size());
        }
        for (Habit habit : Habit.values()) {
            List<Stated> of = stated.stream().filter(s -> s.habit() == habit).toList();
            System.out.printf(
                    "%s stated %.3f, so %.3f, Brier %.4f, nearest witness %.4f, n %d; called mixing %.2f%n",
                    habit,
                    meanStated(of),
                    so(of),
                    of.stream().mapToDouble(Stated::brier).average().orElse(0),
                    of.stream().mapToDouble(Stated::nearestBrier).average().orElse(0),
                    of.size(),
                    calledMixing(habit));
            List<Interval> changes =
                    intervals.stream().filter(i -> i.habit() == habit).toList();
            if (!changes.isEmpty()) {
                System.out.printf("   change-overs %d, covered %.3f%n", changes.size(), covered(changes));
            }
        }
        System.out.printf(
                "all: Brier %.4f, nearest %.4f; change-overs %d, stated %.3f, covered %.3f%n",
                brier(),
                nearestBrier(),
                intervals.size(),
                intervals.stream().mapToDouble(Interval::stated).average().orElse(0),
                covered());
    }
}
