package hornwright.engines.belief;

import java.util.Arrays;

/**
 * The single most probable segmentation, found from the right end. Among equals: fewer cuts, then the lower first cut.
 * Two segmentations are equal when their log weights differ by less than 1e-9, far above rounding.
 */
final class BestCuts {
    private static final double EQUAL = 1e-9;

    private final int n;
    private final double[] score;
    private final int[] cuts;
    private final int[] end;

    BestCuts(int n) {
        this.n = n;
        score = new double[n + 1];
        cuts = new int[n + 1];
        end = new int[n + 1];
    }

    /** {@code row[t]}: log weight of the segment from s to t without the cut that follows it. */
    void start(int s, double[] row, double logCut) {
        score[s] = row[n];
        cuts[s] = 0;
        end[s] = n;
        for (int t = n - 1; t > s; t--) {
            double here = row[t] + logCut + score[t];
            double gain = here - score[s];
            boolean equal = Math.abs(gain) <= EQUAL;
            if (equal ? cuts[t] + 1 <= cuts[s] : gain > 0) {
                score[s] = here;
                cuts[s] = cuts[t] + 1;
                end[s] = t;
            }
        }
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
