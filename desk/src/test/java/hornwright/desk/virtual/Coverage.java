package hornwright.desk.virtual;

import java.util.Map;
import java.util.TreeMap;

/** How often what is stated as value ± 2 u holds the truth, by kind of number. */
final class Coverage {
    /** Counts of one kind; the error is in units of its own u. */
    static final class Tally {
        private int count;
        private int held;
        private double sum;
        private double square;
        private double stated;

        private void add(double value, double u, double truth) {
            double off = (value - truth) / u;
            count++;
            held += Math.abs(off) <= 2 ? 1 : 0;
            sum += off;
            square += off * off;
            stated += u;
        }

        double share() {
            return held / (double) count;
        }

        int count() {
            return count;
        }

        /** Mean error in u: a bias. */
        double bias() {
            return sum / count;
        }

        /** Root mean square error in u: 1 where u says what it should. */
        double spread() {
            return Math.sqrt(square / count);
        }

        double meanU() {
            return stated / count;
        }
    }

    private final Map<String, Tally> tallies = new TreeMap<>();
    private final Map<String, int[]> promises = new TreeMap<>();

    /** A promise kept or not, such as that a pad out of a window leaves enough to float. */
    void promise(String kind, boolean kept) {
        promises.computeIfAbsent(kind, none -> new int[2])[kept ? 1 : 0]++;
    }

    double kept(String kind) {
        int[] counts = promises.getOrDefault(kind, new int[] {1, 0});
        return counts[1] / (double) (counts[0] + counts[1]);
    }

    void add(String kind, double value, double u, double truth) {
        if (u > 0) {
            tallies.computeIfAbsent(kind, none -> new Tally()).add(value, u, truth);
        }
    }

    Map<String, Tally> tallies() {
        return tallies;
    }

    void print(String title) {
        System.out.println(title);
        tallies.forEach((kind, tally) -> System.out.printf(
                "  %-44s %.3f  n %7d  bias %+.2f  rms %.2f  mean u %.3f%n",
                kind, tally.share(), tally.count(), tally.bias(), tally.spread(), tally.meanU()));
        promises.forEach(
                (kind, counts) -> System.out.printf("  %-44s %.3f  n %7d%n", kind, kept(kind), counts[0] + counts[1]));
    }
}
