package hornwright.engines.linkage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Linear complementarity w = M z + q by trying every complementary basis: slow, without iteration and without a choice
 * that could go wrong.
 */
final class EveryBasis {
    private static final double NEGATIVE = -1e-9;

    private EveryBasis() {}

    /** All different solutions z. */
    static List<double[]> solutions(double[][] m, double[] q) {
        List<double[]> found = new ArrayList<>();
        for (int basis = 0; basis < 1 << q.length; basis++) {
            solve(m, q, basis).filter(z -> holds(m, q, z)).ifPresent(z -> {
                if (found.stream().noneMatch(other -> near(other, z))) {
                    found.add(z);
                }
            });
        }
        return found;
    }

    private static boolean near(double[] one, double[] two) {
        double most = 0;
        double scale = 1;
        for (int i = 0; i < one.length; i++) {
            most = Math.max(most, Math.abs(one[i] - two[i]));
            scale = Math.max(scale, Math.abs(one[i]));
        }
        return most <= 1e-9 * scale;
    }

    private static boolean holds(double[][] m, double[] q, double[] z) {
        for (int i = 0; i < q.length; i++) {
            double w = q[i];
            for (int j = 0; j < q.length; j++) {
                w += m[i][j] * z[j];
            }
            if (w < NEGATIVE || z[i] < NEGATIVE) {
                return false;
            }
        }
        return true;
    }

    /** z with the chosen entries solving their lines and the others zero; empty where those lines are singular. */
    private static Optional<double[]> solve(double[][] m, double[] q, int basis) {
        int[] in = java.util.stream.IntStream.range(0, q.length)
                .filter(i -> (basis & 1 << i) != 0)
                .toArray();
        double[][] a = new double[in.length][in.length + 1];
        for (int i = 0; i < in.length; i++) {
            for (int j = 0; j < in.length; j++) {
                a[i][j] = m[in[i]][in[j]];
            }
            a[i][in.length] = -q[in[i]];
        }
        if (!eliminate(a)) {
            return Optional.empty();
        }
        double[] z = new double[q.length];
        for (int i = 0; i < in.length; i++) {
            z[in[i]] = a[i][in.length];
        }
        return Optional.of(z);
    }

    /** Gauss-Jordan with the largest pivot of each column. */
    private static boolean eliminate(double[][] a) {
        for (int c = 0; c < a.length; c++) {
            int pivot = c;
            for (int r = c + 1; r < a.length; r++) {
                pivot = Math.abs(a[r][c]) > Math.abs(a[pivot][c]) ? r : pivot;
            }
            if (Math.abs(a[pivot][c]) < 1e-12) {
                return false;
            }
            double[] swap = a[c];
            a[c] = a[pivot];
            a[pivot] = swap;
            for (int r = 0; r < a.length; r++) {
                double share = r == c ? 0 : a[r][c] / a[c][c];
                for (int k = c; k <= a.length && share != 0; k++) {
                    a[r][k] -= share * a[c][k];
                }
            }
        }
        for (int c = 0; c < a.length; c++) {
            a[c][a.length] /= a[c][c];
        }
        return true;
    }
}
