package hornwright.engines.air;

import hornwright.engines.air.Rung.Branch;
import java.util.ArrayList;
import java.util.List;

/**
 * The elements of a horn at evenly spaced frequencies, kept for all fingerings: a fingering then costs one short product
 * for each frequency. Only brackets are read from it; every answer is found at frequencies of its own.
 */
final class Grid {
    /** A mode is met by at least so many frequencies. */
    private static final double POINTS_A_MODE = 25;

    private static final double COARSEST = 5;

    private final Ladder ladder;
    private final int[] places;
    private final int size;
    final double step;
    private final List<double[]> columns = new ArrayList<>();

    Grid(Ladder ladder) {
        this.ladder = ladder;
        places = new int[ladder.rungs.size()];
        int next = 0;
        for (int i = 0; i < places.length; i++) {
            places[i] = next;
            next += ladder.rungs.get(i) instanceof Branch ? 2 * Ladder.SIZE : Ladder.SIZE;
        }
        size = next;
        double mode = ladder.input.air().speed() / (2 * ladder.length());
        step = Math.min(COARSEST, mode / POINTS_A_MODE);
    }

    /** Admittance of a fingering at {@code index} steps; index 1 is the first. */
    Complex admittance(int index, boolean[] states) {
        double[] column = column(index);
        double omega = ladder.omega(index * step);
        Complex load = ladder.bell(omega);
        double[] v = {load.re(), load.im(), 1, 0};
        for (int i = places.length - 1; i >= 0; i--) {
            boolean open = ladder.rungs.get(i) instanceof Branch branch && states[branch.hole()];
            carry(column, places[i] + (open ? Ladder.SIZE : 0), v);
        }
        return ladder.mouth(omega, new Complex(v[0], v[1]), new Complex(v[2], v[3]));
    }

    private static void carry(double[] m, int at, double[] v) {
        double pr = v[0];
        double pi = v[1];
        double ur = v[2];
        double ui = v[3];
        v[0] = m[at] * pr - m[at + 1] * pi + m[at + 2] * ur - m[at + 3] * ui;
        v[1] = m[at] * pi + m[at + 1] * pr + m[at + 2] * ui + m[at + 3] * ur;
        v[2] = m[at + 4] * pr - m[at + 5] * pi + m[at + 6] * ur - m[at + 7] * ui;
        v[3] = m[at + 4] * pi + m[at + 5] * pr + m[at + 6] * ui + m[at + 7] * ur;
    }

    private double[] column(int index) {
        while (columns.size() < index) {
            columns.add(fresh(ladder.omega((columns.size() + 1) * step)));
        }
        return columns.get(index - 1);
    }

    private double[] fresh(double omega) {
        double[] column = new double[size];
        Air air = ladder.input.air();
        boolean losses = ladder.input.losses();
        for (int i = 0; i < places.length; i++) {
            switch (ladder.rungs.get(i)) {
                case Rung.Stretch stretch -> stretch.matrix(air, omega, losses).write(column, places[i]);
                case Rung.Pinhole leak -> leak.matrix(air, omega, losses).write(column, places[i]);
                case Branch branch -> {
                    branch.matrix(air, omega, losses, false).write(column, places[i]);
                    branch.matrix(air, omega, losses, true).write(column, places[i] + Ladder.SIZE);
                }
            }
        }
        return column;
    }
}
