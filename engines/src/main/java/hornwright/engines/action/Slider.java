package hornwright.engines.action;

import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * The key as seen from the point that meets the stop: a mass on a line, y = 0 closed and growing as it opens. The spring
 * pushes with push − rate·y, friction holds against motion, and beyond {@code touch} the bumper pushes back.
 *
 * @param mass kg
 * @param push N
 * @param rate N/m
 * @param friction N
 * @param touch m
 */
record Slider(double mass, double push, double rate, double friction, double touch, Bumper bumper) {

    static Slider of(ActionInput key) {
        double arm = key.stopArm();
        return new Slider(
                key.inertia() / (arm * arm),
                key.torque() / arm,
                key.rate() / (arm * arm),
                key.friction() / arm,
                key.travel() / key.cupArm() * arm,
                key.bumper());
    }

    /** Force of spring and resting bumper, N. */
    double pull(double y) {
        return push - rate * y - bumper.force(y - touch, 0);
    }

    /** Acceleration when moving in a direction (+1 opening). */
    double acceleration(double y, double v, int direction) {
        return (push - rate * y - direction * friction - bumper.force(y - touch, v)) / mass;
    }

    double energy(double y, double v) {
        return mass * v * v / 2 - push * y + rate * y * y / 2 + bumper.energy(y - touch);
    }

    /** Where the pull vanishes; infinite for a constant push that meets no bumper, which cannot be. */
    double balance() {
        double left = push - rate * touch;
        if (left <= 0) {
            return push / rate;
        }
        double deep = Math.pow(left / bumper.stiffness(), 1 / bumper.exponent());
        if (rate == 0) {
            return touch + deep;
        }
        return touch
                + new BracketingNthOrderBrentSolver(1e-15, 1e-20, 1e-18, 5)
                        .solve(200, x -> left - rate * x - bumper.force(x, 0), 0, deep);
    }
}
