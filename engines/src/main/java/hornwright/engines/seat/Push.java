package hornwright.engines.seat;

/** What the pad pushes back with, summed round the ring: force, moments, stiffness, energy, angle in contact. */
final class Push implements Ring.Sink {
    private final PadStiffness pad;
    private final double radius;

    /** Sums of p R, p R cos, p R sin: N. */
    final double[] load = new double[3];

    /** Sums of p' R (1, cos, sin) ⊗ (1, cos, sin): N/m. */
    final double[][] stiffness = new double[3][3];

    double energy;
    double contactAngle;

    private Push(PadStiffness pad, double radius) {
        this.pad = pad;
        this.radius = radius;
    }

    static Push of(Ring ring, PadStiffness pad, double radius) {
        Push push = new Push(pad, radius);
        ring.integrate(pad.bends(), push);
        return push;
    }

    @Override
    public void add(double angle, double weight, double compression) {
        if (compression <= 0) {
            return;
        }
        double[] shape = {1, Math.cos(angle), Math.sin(angle)};
        double force = weight * radius * pad.pressure(compression);
        double rate = weight * radius * pad.slope(compression);
        for (int i = 0; i < 3; i++) {
            load[i] += force * shape[i];
            for (int j = 0; j < 3; j++) {
                stiffness[i][j] += rate * shape[i] * shape[j];
            }
        }
        energy += weight * radius * pad.energy(compression);
        contactAngle += weight;
    }

    /** Torque about a hinge at this arm from the centre, N m. */
    double torque(double arm) {
        return arm * load[0] + radius * load[1];
    }

    /** Rise of that torque with the turn of the key, N m/rad. */
    double torqueRate(double arm) {
        return arm * arm * stiffness[0][0] + 2 * arm * radius * stiffness[0][1] + radius * radius * stiffness[1][1];
    }
}
