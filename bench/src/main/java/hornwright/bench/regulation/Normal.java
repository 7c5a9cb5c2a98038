package hornwright.bench.regulation;

/** The normal equations of one step: (JᵀJ + prior + damping) step = -(Jᵀ misfit + prior pull), by Cholesky. */
final class Normal {
    private final int size;
    private final double[][] root;
    private final double[] right;

    Normal(double[][] slopes, double[] misfit, double[] at, double[] prior, double damping) {
        size = at.length;
        double[][] matrix = new double[size][size];
        right = new double[size];
        for (int i = 0; i < size; i++) {
            double weight = 1 / (prior[i] * prior[i]);
            right[i] = -weight * at[i];
            for (int r = 0; r < misfit.length; r++) {
                right[i] -= slopes[r][i] * misfit[r];
                for (int j = 0; j < size; j++) {
                    matrix[i][j] += slopes[r][i] * slopes[r][j];
                }
            }
            matrix[i][i] += weight;
        }
        for (int i = 0; i < size; i++) {
            matrix[i][i] *= 1 + damping;
        }
        root = root(matrix);
    }

    /** The lower triangle whose square is this matrix. */
    static double[][] root(double[][] matrix) {
        int size = matrix.length;
        double[][] root = new double[size][size];
        for (int i = 0; i < size; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = matrix[i][j];
                for (int k = 0; k < j; k++) {
                    sum -= root[i][k] * root[j][k];
                }
                root[i][j] = i == j ? Math.sqrt(sum) : sum / root[j][j];
            }
        }
        return root;
    }

    double[] step() {
        return solve(right);
    }

    private double[] solve(double[] of) {
        double[] x = of.clone();
        for (int i = 0; i < size; i++) {
            for (int k = 0; k < i; k++) {
                x[i] -= root[i][k] * x[k];
            }
            x[i] /= root[i][i];
        }
        for (int i = size - 1; i >= 0; i--) {
            for (int k = i + 1; k < size; k++) {
                x[i] -= root[k][i] * x[k];
            }
            x[i] /= root[i][i];
        }
        return x;
    }

    /** The inverse of the matrix: with damping 0 the covariance of the contacts' errors. */
    double[][] inverse() {
        double[][] inverse = new double[size][];
        for (int i = 0; i < size; i++) {
            double[] unit = new double[size];
            unit[i] = 1;
            inverse[i] = solve(unit);
        }
        return inverse;
    }
}
