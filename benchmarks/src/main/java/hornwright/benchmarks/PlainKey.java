package hornwright.benchmarks;

import hornwright.engines.action.ActionInput;

/** A key by steps of a microsecond through 45 ms: no located touch, a hundredth off in its heights. */
final class PlainKey {
    private static final double STEP = 1e-6;
    private static final double LASTS = 0.045;

    private final ActionInput key;

    PlainKey(ActionInput key) {
        this.key = key;
    }

    double firstRebound() {
        double stop = key.travel() / key.cupArm();
        double q = 0;
        double w = 0;
        double first = 0;
        for (double t = 0; t < LASTS; t += STEP) {
            double middle = w + STEP / 2 * acceleration(q, w, stop);
            double there = q + STEP / 2 * w;
            double after = w + STEP * acceleration(there, middle, stop);
            if (first == 0 && w < 0 && after >= 0) {
                first = key.cupArm() * (stop - q);
            }
            q += STEP * middle;
            w = after;
        }
        return first;
    }

    private double acceleration(double q, double w, double stop) {
        double deep = key.stopArm() * (q - stop);
        double push = deep <= 0
                ? 0
                : key.bumper().stiffness()
                        * Math.pow(deep, key.bumper().exponent())
                        * (1 + key.bumper().damping() * key.stopArm() * w);
        double torque = key.torque() - key.rate() * q - Math.signum(w) * key.friction();
        return (torque - key.stopArm() * Math.max(0, push)) / key.inertia();
    }
}
