package hornwright.engines.belief;

import java.util.function.BiConsumer;

/** The second method: every one of the 2^(n−1) partitions, one after another. */
final class EveryPartition {
    private EveryPartition() {}

    /** Shows each partition as the positions its segments start at, followed by n, and its weight. */
    static void show(SegmentEvidence evidence, double change, BiConsumer<int[], Double> visitor) {
        int n = evidence.positions();
        double[][] logs = new double[n][n + 1];
        for (int s = 0; s < n; s++) {
            evidence.from(s, logs[s]);
        }
        for (int mask = 0; mask < 1 << (n - 1); mask++) {
            int cuts = Integer.bitCount(mask);
            int[] bounds = new int[cuts + 2];
            int next = 1;
            for (int i = 0; i < n - 1; i++) {
                if ((mask & (1 << i)) != 0) {
                    bounds[next++] = i + 1;
                }
            }
            bounds[next] = n;
            double log = 0;
            for (int i = 0; i <= cuts; i++) {
                log += logs[bounds[i]][bounds[i + 1]];
            }
            visitor.accept(bounds, Math.exp(log) * Math.pow(change, cuts) * Math.pow(1 - change, n - 1 - cuts));
        }
    }
}
