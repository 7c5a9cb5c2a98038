package hornwright.engines.action;

import hornwright.engines.action.Leg.State;
import java.util.function.ToDoubleFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * Single steps of the motion in one direction by the pair of orders 5 and 4 of J. R. Dormand and P. J. Prince, A family of
 * embedded Runge-Kutta formulae, 1980.
 */
final class Stepper {
    private static final double[][] A = {
        {},
        {1.0 / 5},
        {3.0 / 40, 9.0 / 40},
        {44.0 / 45, -56.0 / 15, 32.0 / 9},
        {19372.0 / 6561, -25360.0 / 2187, 64448.0 / 6561, -212.0 / 729},
        {9017.0 / 3168, -355.0 / 33, 46732.0 / 5247, 49.0 / 176, -5103.0 / 18656},
        {35.0 / 384, 0, 500.0 / 1113, 125.0 / 192, -2187.0 / 6784, 11.0 / 84}
    };
    private static final double[] ERROR = {
        71.0 / 57600, 0, -71.0 / 16695, 71.0 / 1920, -17253.0 / 339200, 22.0 / 525, -1.0 / 40
    };

    private final Slider slider;
    private final int direction;
    private final double[] speeds = new double[7];
    private final double[] accelerations = new double[7];

    Stepper(Slider slider, int direction) {
        this.slider = slider;
        this.direction = direction;
    }

    State step(State from, double step) {
        double place = from.place();
        double speed = from.speed();
        for (int stage = 0; stage < 7; stage++) {
            place = from.place() + step * sum(A[stage], speeds, stage);
            speed = from.speed() + step * sum(A[stage], accelerations, stage);
            speeds[stage] = speed;
            accelerations[stage] = slider.acceleration(place, speed, direction);
        }
        return new State(from.time() + step, place, speed);
    }

    /** Estimated error of the last step, in units of the tolerances. */
    double error(double step, double placeTolerance, double speedTolerance) {
        double place = step * sum(ERROR, speeds, 7) / placeTolerance;
        double speed = step * sum(ERROR, accelerations, 7) / speedTolerance;
        return Math.max(Math.abs(place), Math.abs(speed));
    }

    /** The part of a step after which something changes sign. */
    double until(State from, double step, ToDoubleFunction<State> crossing) {
        return new BracketingNthOrderBrentSolver(1e-15, 1e-15 * step, 1e-22, 5)
                .solve(200, part -> crossing.applyAsDouble(step(from, part)), 0, step);
    }

    private static double sum(double[] weights, double[] values, int count) {
        double sum = 0;
        for (int i = 0; i < count; i++) {
            sum += weights[i] * values[i];
        }
        return sum;
    }
}
