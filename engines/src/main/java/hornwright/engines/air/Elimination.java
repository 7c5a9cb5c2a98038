package hornwright.engines.air;

/** Linear equations with complex numbers, by elimination with the largest pivot of a column. */
final class Elimination {
    private Elimination() {}

    /** Solves rows · x = right; both are overwritten. */
    static Complex[] solve(Complex[][] rows, Complex[] right) {
        int n = right.length;
        for (int c = 0; c < n; c++) {
            pivot(rows, right, c);
            Complex inverse = rows[c][c].inverse();
            for (int r = c + 1; r < n; r++) {
                Complex factor = rows[r][c].times(inverse);
                for (int m = c + 1; m < n; m++) {
                    rows[r][m] = rows[r][m].minus(factor.times(rows[c][m]));
                }
                right[r] = right[r].minus(factor.times(right[c]));
            }
        }
        for (int r = n - 1; r >= 0; r--) {
            Complex rest = right[r];
            for (int m = r + 1; m < n; m++) {
                rest = rest.minus(rows[r][m].times(right[m]));
            }
            right[r] = rest.over(rows[r][r]);
        }
        return right;
    }

    private static void pivot(Complex[][] rows, Complex[] right, int column) {
        int best = column;
        for (int r = column + 1; r < rows.length; r++) {
            if (rows[r][column].squared() > rows[best][column].squared()) {
                best = r;
            }
        }
        Complex[] row = rows[best];
        rows[best] = rows[column];
        rows[column] = row;
        Complex value = right[best];
        right[best] = right[column];
        right[column] = value;
    }
}
