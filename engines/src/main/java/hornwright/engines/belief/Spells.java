package hornwright.engines.belief;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Stretches of positions at which the same materials were most probably in use, each position judged by itself. The single
 * most probable course is not asked for: it prefers one long way of mixing to several short ways that together are likelier.
 *
 * @param start first position of each stretch, ascending, the first of them 0; empty for no positions
 * @param shares of each material, over a stretch, given which were in use
 * @param mixed probability that more than one was, averaged over a stretch
 */
record Spells(int[] start, List<double[]> shares, double[] mixed) {
    static Spells of(Weighed courses, Laws laws, int n) {
        int[] start = new int[n];
        int count = 0;
        int before = -1;
        List<double[]> shares = new ArrayList<>();
        double[] mixed = new double[n];
        double[] sum = new double[laws.ways()];
        for (int i = 0; i < n; i++) {
            double[] chances = courses.chances(i);
            int here = likeliest(chances, laws, before);
            if (here != before) {
                if (i > 0) {
                    mixed[count - 1] = laws.mixed(sum) / (i - start[count - 1]);
                    shares.add(shares(sum, laws, before));
                }
                Arrays.fill(sum, 0);
                start[count++] = i;
                before = here;
            }
            for (int z = 0; z < sum.length; z++) {
                sum[z] += chances[z];
            }
        }
        if (n > 0) {
            mixed[count - 1] = laws.mixed(sum) / (n - start[count - 1]);
            shares.add(shares(sum, laws, before));
        }
        return new Spells(Arrays.copyOf(start, count), shares, Arrays.copyOf(mixed, count));
    }

    /** The likeliest set of materials; among equals that of the position before. */
    private static int likeliest(double[] chances, Laws laws, int before) {
        double[] sets = new double[laws.sets()];
        for (int z = 0; z < chances.length; z++) {
            sets[laws.uses[z]] += chances[z];
        }
        int best = Math.max(before, 0);
        for (int set = 0; set < sets.length; set++) {
            best = sets[set] > sets[best] ? set : best;
        }
        return best;
    }

    private static double[] shares(double[] sum, Laws laws, int set) {
        double[] inSet = new double[sum.length];
        double all = 0;
        for (int z = 0; z < sum.length; z++) {
            inSet[z] = laws.uses[z] == set ? sum[z] : 0;
            all += inSet[z];
        }
        double[] shares = laws.sharesUnder(inSet);
        for (int k = 0; k < shares.length; k++) {
            shares[k] /= all;
        }
        return shares;
    }
}
