package hornwright.bench.plan.seat;

import hornwright.bench.plan.Because;
import java.util.List;

/**
 * Figures of an engine with what is not known carried through: each input moved down and up by its uncertainty, the larger
 * difference taken, differences added by their squares. Where an answer bends, as a leak at nothing does, this says more
 * than a slope.
 */
record Moved(double[] values, double[] us) {
    /** What the engine gives for its inputs. */
    @FunctionalInterface
    interface Figures {
        double[] of(double[] inputs);
    }

    static Moved of(double[] at, List<Because.Input> inputs, Figures engine) {
        double[] middle = engine.of(at);
        double[] squares = new double[middle.length];
        for (int i = 0; i < at.length; i++) {
            double u = inputs.get(i).u();
            if (u > 0) {
                double[] off = larger(middle, engine.of(with(at, i, at[i] - u)), engine.of(with(at, i, at[i] + u)));
                for (int figure = 0; figure < squares.length; figure++) {
                    squares[figure] += off[figure] * off[figure];
                }
            }
        }
        double[] us = new double[squares.length];
        for (int figure = 0; figure < us.length; figure++) {
            us[figure] = Math.sqrt(squares[figure]);
        }
        return new Moved(middle, us);
    }

    double value(int figure) {
        return values[figure];
    }

    double u(int figure) {
        return us[figure];
    }

    private static double[] with(double[] at, int i, double value) {
        double[] moved = at.clone();
        moved[i] = value;
        return moved;
    }

    private static double[] larger(double[] middle, double[] down, double[] up) {
        double[] off = new double[middle.length];
        for (int i = 0; i < off.length; i++) {
            off[i] = Math.max(Math.abs(down[i] - middle[i]), Math.abs(up[i] - middle[i]));
        }
        return off;
    }
}
