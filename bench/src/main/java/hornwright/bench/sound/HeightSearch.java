package hornwright.bench.sound;

import java.util.ArrayList;
import java.util.List;

/**
 * The fewest height changes that bring notes into a band, for effects that add up along straight lines. The excess outside the
 * band is summed over the notes; all single cups and all pairs are tried, larger sets are grown one cup at a time and pruned.
 */
final class HeightSearch {
    private static final double WORTH = 1.0;
    private static final double LEAST_EFFECT = 0.5;
    private static final int ROUNDS = 30;
    private static final double STEP = 0.1;

    private final double[] cents;
    private final double[][] effects;
    private final double[] least;
    private final double[] most;
    private final double band;
    private final boolean[] chosen;

    /**
     * @param cents by note
     * @param effects cents per mm by note and cup
     * @param least lowest change by cup, mm, at most 0
     * @param most greatest change by cup, mm, at least 0
     * @param chosen by note: whether it shall come nearer; the others shall only not get worse
     */
    HeightSearch(double[] cents, double[][] effects, double[] least, double[] most, double band, boolean[] chosen) {
        this.cents = cents;
        this.effects = effects;
        this.least = least;
        this.most = most;
        this.band = band;
        this.chosen = chosen;
    }

    /** Changes by cup, mm, in tenths; all zero when nothing is worth it. */
    double[] smallest() {
        List<Integer> useful = useful();
        double[] best = new double[least.length];
        double excess = excess(best);
        if (excess == 0) {
            return best;
        }
        for (int size = 1; size <= 2; size++) {
            double[] found = bestOf(useful, size);
            if (excess(found) < excess - WORTH) {
                best = found;
                excess = excess(found);
            }
            if (excess == 0) {
                return best;
            }
        }
        return pruned(grown(best, useful));
    }

    private List<Integer> useful() {
        List<Integer> useful = new ArrayList<>();
        for (int cup = 0; cup < least.length; cup++) {
            boolean moves = false;
            for (int note = 0; note < cents.length; note++) {
                moves |= chosen[note] && Math.abs(cents[note]) > band && Math.abs(effects[note][cup]) > LEAST_EFFECT;
            }
            if (moves && most[cup] > least[cup]) {
                useful.add(cup);
            }
        }
        return useful;
    }

    private double[] bestOf(List<Integer> useful, int size) {
        double[] best = new double[least.length];
        for (int i = 0; i < useful.size(); i++) {
            for (int k = size == 1 ? i : i + 1; k < (size == 1 ? i + 1 : useful.size()); k++) {
                List<Integer> cups = size == 1 ? List.of(useful.get(i)) : List.of(useful.get(i), useful.get(k));
                double[] x = settled(new double[least.length], cups);
                best = better(x, best) ? x : best;
            }
        }
        return best;
    }

    private double[] grown(double[] from, List<Integer> useful) {
        double[] best = from;
        boolean gained = true;
        while (gained && excess(best) > 0) {
            gained = false;
            double[] next = best;
            for (int cup : useful) {
                if (best[cup] == 0) {
                    List<Integer> cups = used(best);
                    cups.add(cup);
                    double[] x = settled(best, cups);
                    next = excess(x) < excess(next) ? x : next;
                }
            }
            if (excess(next) < excess(best) - WORTH) {
                best = next;
                gained = true;
            }
        }
        return best;
    }

    private double[] pruned(double[] from) {
        double[] best = from;
        for (int cup : used(from)) {
            double[] less = best.clone();
            less[cup] = 0;
            List<Integer> rest = used(less);
            double[] x = settled(less, rest);
            if (excess(x) <= excess(best) + WORTH) {
                best = x;
            }
        }
        return best;
    }

    private static List<Integer> used(double[] x) {
        List<Integer> used = new ArrayList<>();
        for (int cup = 0; cup < x.length; cup++) {
            if (x[cup] != 0) {
                used.add(cup);
            }
        }
        return used;
    }

    /** Moves the given cups in tenths, one after another, while that helps; of equal helps the smaller change. */
    private double[] settled(double[] from, List<Integer> cups) {
        double[] x = from.clone();
        for (int round = 0; round < ROUNDS; round++) {
            boolean moved = false;
            for (int cup : cups) {
                double best = line(x, cup);
                moved |= best != x[cup];
                x[cup] = best;
            }
            if (!moved) {
                break;
            }
        }
        return x;
    }

    private double line(double[] x, int cup) {
        double[] tried = x.clone();
        double best = x[cup];
        for (int tenth = (int) Math.ceil(least[cup] / STEP); tenth * STEP <= most[cup] + 1e-9; tenth++) {
            tried[cup] = tenth * STEP;
            double[] held = x.clone();
            held[cup] = best;
            if (better(tried, held)) {
                best = tried[cup];
            }
        }
        return best;
    }

    private boolean better(double[] a, double[] b) {
        double difference = excess(a) - excess(b);
        return difference < -1e-9 || (difference < 1e-9 && effort(a) < effort(b) - 1e-9);
    }

    private static double effort(double[] x) {
        double sum = 0;
        for (double change : x) {
            sum += Math.abs(change);
        }
        return sum;
    }

    /** Cents outside the band; those by which a note is taken out of it, or further out, count twice. */
    private double excess(double[] x) {
        double sum = 0;
        for (int note = 0; note < cents.length; note++) {
            double after = cents[note];
            for (int cup = 0; cup < x.length; cup++) {
                after += x[cup] == 0 ? 0 : effects[note][cup] * x[cup];
            }
            double over = Math.max(0, Math.abs(after) - band);
            double overBefore = Math.max(0, Math.abs(cents[note]) - band);
            sum += (chosen[note] ? over : Math.max(0, over - overBefore)) + Math.max(0, over - overBefore);
        }
        return sum;
    }
}
