package hornwright.bench.sound;

/** Inverse of a small symmetric matrix whose diagonal leads, by Gauss and Jordan without pivots. */
final class Inverse {
    private Inverse() {}

    static double[][] of(double[][] matrix) {
        int n = matrix.length;
        double[][] work = new double[n][2 * n];
        for (int r = 0; r < n; r++) {
            System.arraycopy(matrix[r], 0, work[r], 0, n);
            work[r][n + r] = 1;
        }
        for (int c = 0; c < n; c++) {
            double pivot = work[c][c];
            for (int k = 0; k < 2 * n; k++) {
                work[c][k] /= pivot;
            }
            for (int r = 0; r < n; r++) {
                double factor = r == c ? 0 : work[r][c];
                for (int k = 0; k < 2 * n; k++) {
                    work[r][k] -= factor * work[c][k];
                }
            }
        }
        double[][] inverse = new double[n][n];
        for (int r = 0; r < n; r++) {
            System.arraycopy(work[r], n, inverse[r], 0, n);
        }
        return inverse;
    }
}
