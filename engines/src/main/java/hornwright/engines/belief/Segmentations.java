package hornwright.engines.belief;

import java.util.Arrays;

/**
 * Every way of cutting a line of positions into segments, summed exactly.
 *
 * <p>A cut falls after each position independently with probability p, so a segmentation with m cuts weighs
 * p^m (1−p)^(n−1−m) times the evidence of its segments. One sweep from the right end gives, for each start, the sum over
 * all segmentations of the rest; read from the left, the posterior is then a Markov chain: a segment that starts at s
 * ends at t with a known probability. All else (how many cuts, where, in which company) is a walk along that chain.
 * O(n²) time, O(n · spread of the number of cuts) memory.
 *
 * <p>Sums are kept relative to each other, rest(s) = scale(s) · rest(s + 1), so that a segment grows by one position with two
 * multiplications and no logarithm: what it weighs with all that may follow, relative to all that may follow s. Such a weight is at most
 * 1/p, so nothing overflows; weights below 1e-200 of their sum end the row, since a segment that fits so badly cannot win back
 * more than the few powers of n that its mixture took to learn. A p below 1e-200 counts as 0.
 *
 * <p>Source: Barry and Hartigan 1993; Liu and Lawrence 1999; Fearnhead 2006.
 */
final class Segmentations {
    /** What is less likely than this is not shown to visitors and not counted. */
    static final double NEGLIGIBLE = 1e-30;

    private static final double HOPELESS = 1e-200;

    private final SegmentEvidence evidence;
    private final int n;
    private final double change;
    /** Sum over all segmentations from s, relative to that from s + 1. */
    private final double[] scale;

    private double logEvidence;
    private final BestCuts best;
    private final double[] changes;

    Segmentations(SegmentEvidence evidence, double change) {
        this.evidence = evidence;
        this.change = change < HOPELESS ? 0 : change;
        n = evidence.positions();
        scale = new double[n + 1];
        best = new BestCuts(n);
        CutCounts counts = new CutCounts(n);
        double[] growth = new double[n + 1];
        double[] weights = new double[n + 1];
        for (int s = n - 1; s >= 0; s--) {
            evidence.grow(s, growth);
            best.start(s, growth, this.change);
            double sum = this.change == 0 ? uncut(s, growth, weights) : weigh(s, growth, weights);
            counts.start(s, weights, sum);
            scale[s] = sum;
            logEvidence += Math.log(sum);
        }
        changes = counts.probabilities();
    }

    /** Weight of the segment from s to each t with all that may follow, relative to all that may follow position s. */
    private double weigh(int s, double[] growth, double[] weights) {
        double stays = growth[s + 1];
        double sum = 0;
        int t = s + 1;
        while (t < n && stays >= HOPELESS * sum) {
            weights[t] = change * stays;
            sum += weights[t];
            stays *= (1 - change) * growth[t + 1] / scale[t];
            t++;
        }
        Arrays.fill(weights, t, n + 1, 0);
        if (t == n) {
            weights[n] = stays;
            sum += stays;
        }
        return sum;
    }

    /** Without any change there is one segment to the end; the others are not reached and their scale never read. */
    private double uncut(int s, double[] growth, double[] weights) {
        double log = 0;
        for (int t = s + 1; t <= n; t++) {
            log += Math.log(growth[t]);
        }
        Arrays.fill(weights, s + 1, n, 0);
        weights[n] = Math.exp(log - logEvidence);
        return weights[n];
    }

    double logEvidence() {
        return logEvidence;
    }

    /** Probability of m = 0 … n−1 cuts. */
    double[] changes() {
        return changes.clone();
    }

    /** Cuts of the most probable segmentation, ascending: a cut c lies before position c. */
    int[] bestCuts() {
        return best.cuts();
    }

    /** One segment, positions start (included) to end (excluded), and the posterior probability that it is one. */
    interface Visitor {
        void segment(int start, int end, double probability);
    }

    /** Shows every segment whose probability is not negligible, and returns the probability of a cut before each position. */
    double[] walk(Visitor visitor) {
        double[] startsAt = new double[n + 1];
        startsAt[0] = 1;
        double[] growth = new double[n + 1];
        double[] weights = new double[n + 1];
        for (int s = 0; s < n; s++) {
            if (startsAt[s] < NEGLIGIBLE) {
                continue;
            }
            if (change == 0) {
                startsAt[n] = 1;
                visitor.segment(0, n, 1);
                break;
            }
            evidence.grow(s, growth);
            weigh(s, growth, weights);
            double share = startsAt[s] / scale[s];
            for (int t = s + 1; t <= n; t++) {
                double probability = share * weights[t];
                if (probability > NEGLIGIBLE) {
                    startsAt[t] += probability;
                    visitor.segment(s, t, probability);
                }
            }
        }
        return Arrays.stream(startsAt).map(p -> Math.min(1, p)).toArray();
    }
}
