package hornwright.engines.belief;

import java.util.Arrays;

/**
 * Every way of cutting a line of positions into segments, summed exactly.
 *
 * <p>A cut falls after each position independently with probability p, so a segmentation with m cuts weighs
 * p^m (1−p)^(n−1−m) times the evidence of its segments. One sweep from the right end gives, for each start, the sum over
 * all segmentations of the rest; read from the left, the posterior is then a Markov chain: a segment that starts at s
 * ends at t with a known probability. All else (how many cuts, where, in which company) is a walk along that chain.
 * O(n²) time, O(n · spread of the number of cuts) memory. Terms below 1e-60 of their sum are left out.
 *
 * <p>Source: Barry and Hartigan 1993; Liu and Lawrence 1999; Fearnhead 2006.
 */
final class Segmentations {
    static final double NEGLIGIBLE = 1e-60;
    private static final double LOG_NEGLIGIBLE = Math.log(NEGLIGIBLE);

    private final SegmentEvidence evidence;
    private final int n;
    private final double logCut;
    private final double logStay;
    /** Log of the sum over all segmentations of positions s to the end. */
    private final double[] rest;

    private final BestCuts best;
    private final double[] changes;

    Segmentations(SegmentEvidence evidence, double change) {
        this.evidence = evidence;
        n = evidence.positions();
        logCut = Math.log(change);
        logStay = Math.log1p(-change);
        rest = new double[n + 1];
        best = new BestCuts(n);
        CutCounts counts = new CutCounts(n);
        double[] row = new double[n + 1];
        for (int s = n - 1; s >= 0; s--) {
            weigh(s, row);
            best.start(s, row, logCut);
            double sum = sumFrom(s, row);
            counts.start(s, row, sum);
        }
        changes = counts.probabilities();
    }

    /** Evidence and price of each segment from s, the cut that ends it not yet paid. */
    private void weigh(int s, double[] row) {
        evidence.from(s, row);
        for (int t = s + 2; t <= n; t++) {
            row[t] += (t - s - 1) * logStay;
        }
    }

    /** Turns the row into weights relative to its largest, sets rest[s], and returns the sum of the weights. */
    private double sumFrom(int s, double[] row) {
        double largest = row[n];
        for (int t = s + 1; t < n; t++) {
            row[t] += logCut + rest[t];
            largest = Math.max(largest, row[t]);
        }
        double sum = 0;
        for (int t = s + 1; t <= n; t++) {
            double below = row[t] - largest;
            row[t] = below < LOG_NEGLIGIBLE ? 0 : Math.exp(below);
            sum += row[t];
        }
        rest[s] = largest + Math.log(sum);
        return sum;
    }

    double logEvidence() {
        return rest[0];
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
        double[] row = new double[n + 1];
        for (int s = 0; s < n; s++) {
            if (startsAt[s] < NEGLIGIBLE) {
                continue;
            }
            weigh(s, row);
            double reference = Math.log(startsAt[s]) - rest[s];
            for (int t = s + 1; t <= n; t++) {
                double log = row[t] + reference + (t < n ? logCut + rest[t] : 0);
                if (log > LOG_NEGLIGIBLE) {
                    double probability = Math.exp(log);
                    startsAt[t] += probability;
                    visitor.segment(s, t, probability);
                }
            }
        }
        return Arrays.stream(startsAt).map(p -> Math.min(1, p)).toArray();
    }
}
