package hornwright.engines.belief;

import java.util.Arrays;

/**
 * How many cuts the positions from s to the end hold, for each s, as a window of probabilities: from the smallest to
 * the largest number that is not negligible.
 */
final class CutCounts {
    private final int n;
    private final int[] lowest;
    private final double[][] window;

    CutCounts(int n) {
        this.n = n;
        lowest = new int[n + 1];
        window = new double[n + 1][0];
    }

    /** {@code weights[t]} over {@code sum} is the probability that the segment from s ends at t. */
    void start(int s, double[] weights, double sum) {
        int low = Integer.MAX_VALUE;
        int high = 0;
        for (int t = s + 1; t <= n; t++) {
            if (weights[t] > Segmentations.NEGLIGIBLE * sum) {
                low = Math.min(low, t == n ? 0 : lowest[t] + 1);
                high = Math.max(high, t == n ? 0 : lowest[t] + window[t].length);
            }
        }
        double[] here = new double[high - low + 1];
        for (int t = s + 1; t < n; t++) {
            if (weights[t] > Segmentations.NEGLIGIBLE * sum) {
                add(window[t], weights[t] / sum, here, lowest[t] + 1 - low);
            }
        }
        if (weights[n] > Segmentations.NEGLIGIBLE * sum) {
            here[0] += weights[n] / sum;
        }
        keep(s, here, low);
    }

    private static void add(double[] from, double weight, double[] to, int shift) {
        for (int i = 0; i < from.length; i++) {
            to[i + shift] += weight * from[i];
        }
    }

    private void keep(int s, double[] here, int low) {
        int first = 0;
        int end = here.length;
        while (here[first] < Segmentations.NEGLIGIBLE) {
            first++;
        }
        while (here[end - 1] < Segmentations.NEGLIGIBLE) {
            end--;
        }
        lowest[s] = low + first;
        window[s] = Arrays.copyOfRange(here, first, end);
    }

    /** Probability of 0 … n−1 cuts in the whole line. */
    double[] probabilities() {
        double[] all = new double[n];
        if (n > 0) {
            System.arraycopy(window[0], 0, all, lowest[0], window[0].length);
        }
        return all;
    }
}
