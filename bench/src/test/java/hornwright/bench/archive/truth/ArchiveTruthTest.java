package hornwright.bench.archive.truth;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.bench.archive.Archive;
import hornwright.bench.archive.AsBuiltAt;
import hornwright.bench.archive.NextLook;
import hornwright.bench.archive.truth.Factory.Habit;
import hornwright.bench.horn.Voice;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Thousands of invented archives, half of them of kinds the model does not assume. The figures are kept in
 * docs/truth.md.
 */
class ArchiveTruthTest {
    /** The archive's two constants were chosen on seeds below this one. */
    private static final int FIRST_UNSEEN = 1001;

    private static final List<Habit> HABITS = List.of(Habit.values());

    /** One statement of the archive and whether it was so. */
    private record Stated(Habit habit, double probability, boolean so, double brier, double nearestBrier) {}

    private record Interval(double stated, boolean covers) {}

    @Test
    void a_hundred_archives_beat_the_nearest_witness() {
        check(100);
    }

    @Test
    @Tag("deep")
    @Tag("archive")
    void a_thousand_archives_say_what_is_so_as_often_as_they_claim() {
        check(1000);
    }

    @Test
    @Tag("deep")
    @Tag("archive")
    void looking_where_the_archive_says_leaves_less_doubt_than_looking_anywhere() {
        double advised = 0;
        double anywhere = 0;
        int asked = 0;
        for (int seed = FIRST_UNSEEN; seed < FIRST_UNSEEN + 400; seed++) {
            Random random = new Random(seed);
            Factory factory = Factory.invent(Habit.CHANGES, random);
            Witnesses seen = Witnesses.look(factory, 12, 0, random);
            long serial = random.nextLong(Factory.FIRST, Factory.LAST);
            List<NextLook> next = seen.archive().nextLooks(Voice.ALTO, serial, List.of(Witnesses.PLACE));
            if (next.isEmpty()) {
                continue;
            }
            long there = (next.getFirst().serials().from()
                            + next.getFirst().serials().to())
                    / 2;
            long elsewhere = random.nextLong(Factory.FIRST, Factory.LAST);
            advised += doubt(seen.and(there, factory.make(there)).archive(), serial);
            anywhere += doubt(seen.and(elsewhere, factory.make(elsewhere)).archive(), serial);
            asked++;
        }
        System.out.printf(
                "look next: %d cases, doubt left %.3f bit, anywhere %.3f bit%n",
                asked, advised / asked, anywhere / asked);
        assertThat(asked).isGreaterThan(50);
        assertThat(advised).isLessThan(0.9 * anywhere);
    }

    private static void check(int archives) {
        List<Stated> stated = new ArrayList<>();
        List<Interval> intervals = new ArrayList<>();
        for (int seed = FIRST_UNSEEN; seed < FIRST_UNSEEN + archives; seed++) {
            Random random = new Random(seed);
            Factory factory = Factory.invent(HABITS.get(seed % HABITS.size()), random);
            Witnesses seen = Witnesses.look(factory, 15 + random.nextInt(46), 0.03, random);
            for (int question = 0; question < 10; question++) {
                long serial = random.nextLong(Factory.FIRST, Factory.LAST);
                AsBuiltAt said = said(seen.archive(), serial);
                stated.add(score(factory, said, factory.make(serial), seen.nearest(serial)));
                if (question == 0
                        && said.changeOver() != null
                        && !factory.sharpChanges().isEmpty()) {
                    intervals.add(interval(factory, said.changeOver()));
                }
            }
        }
        report(stated, intervals);
        double brier = stated.stream().mapToDouble(Stated::brier).average().orElseThrow();
        double nearest =
                stated.stream().mapToDouble(Stated::nearestBrier).average().orElseThrow();
        assertThat(brier).isLessThan(0.75 * nearest);
        assertThat(soAmong(stated, 0.7, 1.01)).isGreaterThanOrEqualTo(meanStated(stated, 0.7, 1.01) - 0.02);
    }

    private static List<Stated> among(List<Stated> stated, double from, double to) {
        return stated.stream()
                .filter(s -> s.probability() >= from && s.probability() < to)
                .toList();
    }

    private static double soAmong(List<Stated> stated, double from, double to) {
        List<Stated> bin = among(stated, from, to);
        return bin.stream().filter(Stated::so).count() / (double) bin.size();
    }

    private static double meanStated(List<Stated> stated, double from, double to) {
        return among(stated, from, to).stream()
                .mapToDouble(Stated::probability)
                .average()
                .orElseThrow();
    }

    private static Interval interval(Factory factory, AsBuiltAt.ChangeOver change) {
        boolean covers = factory.sharpChanges().stream()
                .anyMatch(at ->
                        at > change.between().from() && at <= change.between().to());
        return new Interval(change.probability(), covers);
    }

    private static Stated score(Factory factory, AsBuiltAt said, String made, String nearest) {
        double brier = 0;
        for (String material : Factory.MATERIALS) {
            double p = said.probabilities().getOrDefault(material, 0.0);
            brier += Math.pow(p - (material.equals(made) ? 1 : 0), 2);
        }
        boolean so = made.equals(said.material());
        return new Stated(factory.habit(), said.probability(), so, brier, nearest.equals(made) ? 0 : 2);
    }

    private static AsBuiltAt said(Archive archive, long serial) {
        return archive.asBuilt(Voice.ALTO, serial, List.of(Witnesses.PLACE))
                .values()
                .iterator()
                .next();
    }

    private static double doubt(Archive archive, long serial) {
        return said(archive, serial).probabilities().values().stream()
                .mapToDouble(p -> p > 0 ? -p * Math.log(p) / Math.log(2) : 0)
                .sum();
    }

    private static void report(List<Stated> stated, List<Interval> intervals) {
        for (double from = 0.3; from < 1; from += 0.1) {
            int n = among(stated, from, from + 0.1).size();
            if (n > 20) {
                System.out.printf(
                        "stated %.2f, so %.2f, n %d%n",
                        meanStated(stated, from, from + 0.1), soAmong(stated, from, from + 0.1), n);
            }
        }
        for (Habit habit : Habit.values()) {
            List<Stated> of = stated.stream().filter(s -> s.habit() == habit).toList();
            System.out.printf(
                    "%s Brier %.4f, nearest witness %.4f, n %d%n",
                    habit,
                    of.stream().mapToDouble(Stated::brier).average().orElse(0),
                    of.stream().mapToDouble(Stated::nearestBrier).average().orElse(0),
                    of.size());
        }
        System.out.printf(
                "change-over intervals: stated %.3f, covered %.3f, n %d%n",
                intervals.stream().mapToDouble(Interval::stated).average().orElse(0),
                intervals.stream().filter(Interval::covers).count() / (double) Math.max(1, intervals.size()),
                intervals.size());
    }
}
