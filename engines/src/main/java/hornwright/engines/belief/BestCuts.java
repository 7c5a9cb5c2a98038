package hornwright.engines.belief;

import java.util.Arrays;

/**
 * The single most probable segmentation, found from the right end. Among equals: fewer cuts, then the lower first cut.
 * Two segmentations are equal when their weights differ by less than 1e-9 of them, far above rounding.
 */
final class BestCuts {
    private static final double EQUAL = 1e-9;

    private final int n;
    /** Weight of the best segmentation from s, relative to that from s + 1. */
    private final double[] scale;

    private final int[] cuts;
    private final int[] end;
    private final double[] scores;

    BestCuts(int n) {
        this.n = n;
        scale = new double[n + 1];
        cuts = new int[n + 1];
        end = new int[n + 1];
        scores = new double[n + 1];
    }

    /** {@code growth[t]}: how much likelier the segment from s becomes by taking in position t − 1. */
    void start(int s, double[] growth, double change) {
        end[s] = n;
        if (change == 0) {
            return;
        }
        double stays = growth[s + 1];
        for (int t = s + 1; t < n; t++) {
            scores[t] = change * stays;
            stays *= (1 - change) * growth[t + 1] / scale[t];
        }
        double most = stays;
        for (int t = n - 1; t > s; t--) {
            double gain = scores[t] - most;
            boolean equal = Math.abs(gain) <= EQUAL * most;
            if (equal ? cuts[t] + 1 <= cuts[s] : gain > 0) {
                most = scores[t];
                cuts[s] = cuts[t] + 1;
                end[s] = t;
            }
        }
        scale[s] = most;
    }

    int[] cuts() {
        int[] found = new int[n];
        int count = 0;
        for (int t = n == 0 ? n : end[0]; t < n; t = end[t]) {
            found[count++] = t;
        }
        return Arrays.copyOf(found, count);
    }
}
