package hornwright.engines.belief;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * How much likelier a segment becomes by one more position, looked up: where weights are whole steps and each position shows
 * one material, the ratio depends on the step, on how many steps of that material the segment holds and on how many in all.
 * Neither logarithm nor exponential is taken on the way.
 */
final class Steps {
    private static final int MOST_ENTRIES = 4_000_000;

    private final int[] material;
    private final int[] step;
    private final int[] size;
    private final double[][] ofMaterial;
    private final double[][] ofTotal;
    private final int materials;

    private Steps(Positions seen, double prior, int[] sizes) {
        int n = seen.size();
        size = sizes;
        materials = seen.materials();
        material = new int[n];
        step = new int[n];
        for (int i = 0; i < n; i++) {
            material[i] = seen.entryMaterial(i);
            step[i] = Arrays.binarySearch(sizes, (int) seen.entrySteps(i));
        }
        int most = (int) seen.totalSteps();
        ofMaterial = ratios(prior, seen.unit, most, sizes, 1);
        ofTotal = ratios(prior * materials, seen.unit, most, sizes, -1);
    }

    /** Nothing where a table would not do: weights that are no whole steps, two materials at one serial, too many steps. */
    static @Nullable Steps of(Positions seen, double prior) {
        boolean single = true;
        for (int i = 0; i < seen.size(); i++) {
            single &= seen.firstEntry(i + 1) == seen.firstEntry(i) + 1;
        }
        if (!single || !seen.whole) {
            return null;
        }
        int[] sizes = new int[seen.size()];
        Arrays.setAll(sizes, i -> (int) seen.entrySteps(i));
        int[] distinct = Arrays.stream(sizes).sorted().distinct().toArray();
        return seen.totalSteps() * distinct.length > MOST_ENTRIES ? null : new Steps(seen, prior, distinct);
    }

    /** Γ(base + (have + size) unit) / Γ(base + have unit), or one over it, by size and by what the segment has. */
    private static double[][] ratios(double base, double unit, int most, int[] sizes, int sign) {
        double[] logs = new double[most + 1];
        Arrays.setAll(logs, have -> LogGamma.of(base + have * unit));
        double[][] ratios = new double[sizes.length][];
        for (int s = 0; s < sizes.length; s++) {
            int size = sizes[s];
            ratios[s] = new double[most - size + 1];
            Arrays.setAll(ratios[s], have -> Math.exp(sign * (logs[have + size] - logs[have])));
        }
        return ratios;
    }

    void grow(int start, double[] growth) {
        int[] have = new int[materials];
        int total = 0;
        for (int i = start; i < material.length; i++) {
            int k = material[i];
            int s = step[i];
            growth[i + 1] = ofMaterial[s][have[k]] * ofTotal[s][total];
            have[k] += size[s];
            total += size[s];
        }
    }
}
