package hornwright.benchmarks;

/** The rest of a pad by halving an angle on a grid of 2048: only the rest, none of the rest of the answer. */
final class PlainSeat {
    private static final int GRID = 2048;
    private static final int HALVINGS = 40;

    private final double radius;
    private final double stiffness;
    private final double torque;
    private final double[] lever = new double[GRID];
    private final double[] rim = new double[GRID];

    PlainSeat(double radius, double arm, double stiffness, double torque) {
        this.radius = radius;
        this.stiffness = stiffness;
        this.torque = torque;
        for (int i = 0; i < GRID; i++) {
            double angle = 2 * Math.PI * (i + 0.5) / GRID;
            lever[i] = arm + radius * Math.cos(angle);
            rim[i] = 50e-6 * Math.cos(2 * angle) + 10e-6 * Math.sin(3 * angle);
        }
    }

    double rotation() {
        double low = -0.01;
        double high = 0.01;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (torqueAt(middle) < torque) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private double torqueAt(double rotation) {
        double sum = 0;
        for (int i = 0; i < GRID; i++) {
            sum += Math.max(0, lever[i] * rotation + rim[i]) * lever[i];
        }
        return sum * stiffness * radius * 2 * Math.PI / GRID;
    }
}
