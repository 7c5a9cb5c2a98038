package hornwright.engines.linkage;

/**
 * Finds where one island rests: the least of the convex energy
 *
 * <pre>E(q) = ½ Σ rate q² - Σ torque q + ½ Σ stiffness min(0, gap(q))²</pre>
 *
 * by Newton steps on the contacts that bear, whole where that is a fair gain, else to the exact least along the step. E is a quadratic on each of finitely many
 * pieces and has a continuous slope, so the step from the piece that holds the rest lands on it; {@code
 * docs/method/linkage.md} proves that this piece is reached. Keeps work arrays: one thread at a time.
 */
final class Settling {
    /** Slopes this small against the torques in play, or against what cancels inside the gaps, are rounding. */
    private static final double ROUNDING = 1e-13;

    /** A whole step is taken if it brings this part of what the slope at its start promises; the best ever is a half. */
    private static final double FAIR = 0.1;

    private static final double ULP = 0x1p-51;

    /** Never met in tests of random mechanisms, which need at most some dozens. */
    private static final int MOST_STEPS = 500;

    private final Island island;
    private final int size;
    private final double[] slope;
    private final double[] step;
    private final double[] diagonal;
    private final double[] below;
    private final double[] lower;
    private final double[] gap;
    private final double[] turn;
    private final double[] bend;
    private final double[] curving;
    private final boolean[] bears;
    private final double[] arm1;
    private final double[] arm2;
    private final double[] free;
    private final double[] stiffness;
    private final double[] rate;
    private final double[] torque;
    private double scale;

    Settling(Island island) {
        this.island = island;
        size = island.keys.length;
        slope = new double[size];
        step = new double[size];
        diagonal = new double[size];
        rate = new double[size];
        torque = new double[size];
        below = new double[island.below.length];
        lower = new double[island.below.length];
        int rows = island.rows.length;
        gap = new double[rows];
        turn = new double[rows];
        bend = new double[rows];
        curving = new double[rows];
        bears = new boolean[rows];
        arm1 = new double[rows];
        arm2 = new double[rows];
        free = new double[rows];
        stiffness = new double[rows];
    }

    /** Takes over the numbers of the contacts of this island. */
    void load(Contacts contacts) {
        for (int r = 0; r < arm1.length; r++) {
            int row = island.rows[r];
            arm1[r] = contacts.arm1[row];
            arm2[r] = contacts.arm2[row];
            free[r] = contacts.free[row];
            stiffness[r] = contacts.stiffness[row];
        }
    }

    /**
     * Rest under these rates and torques (by key of the mechanism, opening positive). Starts at, and writes to, the
     * island's own entries of {@code rotation}.
     *
     * @return Newton steps taken
     */
    int settle(double[] rates, double[] torques, double[] rotation) {
        double[] q = new double[size];
        double load = 0;
        for (int p = 0; p < size; p++) {
            q[p] = rotation[island.keys[p]];
            rate[p] = rates[island.keys[p]];
            torque[p] = torques[island.keys[p]];
            load = Math.max(load, Math.abs(torque[p]));
        }
        scale = load;
        int steps = 0;
        gaps(q);
        while (!levelled(q)) {
            if (++steps > MOST_STEPS) {
                throw new IllegalStateException("no rest after " + MOST_STEPS + " steps");
            }
            newton();
            boolean samePiece = turns();
            double share = samePiece || falls() ? 1 : share();
            for (int p = 0; p < size; p++) {
                q[p] += share * step[p];
            }
            gaps(q);
            if (samePiece) {
                break;
            }
        }
        for (int p = 0; p < size; p++) {
            rotation[island.keys[p]] = q[p];
        }
        return steps;
    }

    private void gaps(double[] q) {
        for (int r = 0; r < gap.length; r++) {
            double g = arm1[r] * q[island.first[r]] + free[r];
            if (island.second[r] >= 0) {
                g += arm2[r] * q[island.second[r]];
            }
            gap[r] = g;
        }
    }

    /** Computes the slope of the energy; true where it vanishes but for rounding. */
    private boolean levelled(double[] q) {
        double seen = scale;
        double noise = 0;
        for (int p = 0; p < size; p++) {
            double sprung = rate[p] * q[p];
            slope[p] = sprung - torque[p];
            seen = Math.max(seen, Math.abs(sprung));
        }
        for (int r = 0; r < gap.length; r++) {
            if (gap[r] < 0) {
                double force = stiffness[r] * gap[r];
                slope[island.first[r]] += force * arm1[r];
                seen = Math.max(seen, Math.abs(force * arm1[r]));
                double parts = Math.abs(free[r]) + Math.abs(arm1[r] * q[island.first[r]]);
                noise = Math.max(noise, stiffness[r] * Math.abs(arm1[r]) * parts);
                if (island.second[r] >= 0) {
                    slope[island.second[r]] += force * arm2[r];
                }
            }
        }
        double most = 0;
        for (int p = 0; p < size; p++) {
            most = Math.max(most, Math.abs(slope[p]));
        }
        return most <= Math.max(ROUNDING * seen, ULP * noise);
    }

    /** Solves the stiffness of the bearing contacts and springs for the step that would level the slope. */
    private void newton() {
        assemble();
        factor();
        for (int p = 0; p < size; p++) {
            step[p] = -slope[p];
        }
        solve(step);
    }

    /** Turns the matrix into its L D Lᵀ, column by column. */
    private void factor() {
        int target = 0;
        for (int p = 0; p < size; p++) {
            double inverse = 1 / diagonal[p];
            for (int e = island.start[p]; e < island.start[p + 1]; e++) {
                double share = below[e] * inverse;
                lower[e] = share;
                diagonal[island.below[e]] -= share * below[e];
                for (int f = e + 1; f < island.start[p + 1]; f++) {
                    below[island.fill[target++]] -= share * below[f];
                }
            }
        }
    }

    private void solve(double[] x) {
        for (int p = 0; p < size; p++) {
            for (int e = island.start[p]; e < island.start[p + 1]; e++) {
                x[island.below[e]] -= lower[e] * x[p];
            }
        }
        for (int p = size - 1; p >= 0; p--) {
            double sum = x[p] / diagonal[p];
            for (int e = island.start[p]; e < island.start[p + 1]; e++) {
                sum -= lower[e] * x[island.below[e]];
            }
            x[p] = sum;
        }
    }

    /** Makes ready for {@link #turning} at a rest. */
    void rest(double[] rates, double[] rotation) {
        double[] q = new double[size];
        for (int p = 0; p < size; p++) {
            q[p] = rotation[island.keys[p]];
            rate[p] = rates[island.keys[p]];
        }
        gaps(q);
        assemble();
        factor();
    }

    /**
     * Writes to {@code turning}, by key of the mechanism, how the rest turns for each metre that the r-th row's gap is
     * made less, as long as the same contacts bear.
     */
    void turning(int r, double[] turning) {
        if (gap[r] >= 0) {
            return;
        }
        java.util.Arrays.fill(step, 0);
        step[island.first[r]] = stiffness[r] * arm1[r];
        if (island.second[r] >= 0) {
            step[island.second[r]] = stiffness[r] * arm2[r];
        }
        solve(step);
        for (int p = 0; p < size; p++) {
            turning[island.keys[p]] = step[p];
        }
    }

    private void assemble() {
        for (int p = 0; p < size; p++) {
            diagonal[p] = rate[p];
        }
        java.util.Arrays.fill(below, 0);
        for (int r = 0; r < gap.length; r++) {
            if (gap[r] < 0) {
                double k1 = stiffness[r] * arm1[r];
                diagonal[island.first[r]] += k1 * arm1[r];
                if (island.second[r] >= 0) {
                    diagonal[island.second[r]] += stiffness[r] * arm2[r] * arm2[r];
                    below[island.entry[r]] += k1 * arm2[r];
                }
            }
        }
    }

    /** How the gaps change along the step; true if none begins or ceases to bear by the end of the whole step. */
    private boolean turns() {
        boolean samePiece = true;
        for (int r = 0; r < gap.length; r++) {
            double t = arm1[r] * step[island.first[r]];
            if (island.second[r] >= 0) {
                t += arm2[r] * step[island.second[r]];
            }
            turn[r] = t;
            samePiece &= (gap[r] < 0) == (gap[r] + t < 0);
        }
        return samePiece;
    }

    /** Whether the whole step lowers the energy by a fair part of what the slope promises. */
    private boolean falls() {
        double incline = 0;
        double change = 0;
        for (int p = 0; p < size; p++) {
            incline += slope[p] * step[p];
            change += rate[p] * step[p] * step[p] / 2;
        }
        for (int r = 0; r < gap.length; r++) {
            double before = Math.min(0, gap[r]);
            double after = Math.min(0, gap[r] + turn[r]);
            change += stiffness[r] * ((after * after - before * before) / 2 - before * turn[r]);
        }
        return incline + change <= FAIR * incline;
    }

    /** Exact least of the energy along the step: its slope there rises in straight pieces, bent where gaps close or open. */
    private double share() {
        double incline = 0;
        double sprung = 0;
        for (int p = 0; p < size; p++) {
            incline += slope[p] * step[p];
            sprung += rate[p] * step[p] * step[p];
        }
        bends();
        double at = 0;
        while (true) {
            int next = nextBend();
            double curve = sprung + bearing();
            double level = at - incline / curve;
            if (!(level > bend[next])) { // so that no number at all ends it too
                return level;
            }
            incline += curve * (bend[next] - at);
            at = bend[next];
            bears[next] = !bears[next];
            bend[next] = Double.POSITIVE_INFINITY;
        }
    }

    /** Where along the step each contact begins or ceases to bear, and what it adds to the curvature while it bears. */
    private void bends() {
        for (int r = 0; r < gap.length; r++) {
            double place = -gap[r] / turn[r];
            bears[r] = gap[r] < 0;
            curving[r] = stiffness[r] * turn[r] * turn[r];
            bend[r] = place > 0 ? place : Double.POSITIVE_INFINITY;
            if (gap[r] == 0 && turn[r] < 0) {
                bears[r] = true;
            }
        }
    }

    private int nextBend() {
        int next = 0;
        for (int r = 1; r < bend.length; r++) {
            if (bend[r] < bend[next]) {
                next = r;
            }
        }
        return next;
    }

    /** Added up afresh at each bend: taking a stiff contact away from a sum would leave its rounding behind. */
    private double bearing() {
        double curve = 0;
        for (int r = 0; r < curving.length; r++) {
            if (bears[r]) {
                curve += curving[r];
            }
        }
        return curve;
    }
}
