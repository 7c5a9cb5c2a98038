package hornwright.engines.action;

/**
 * What the key's foot lands on: F = K xᵖ (1 + c v), never pulling.
 *
 * @param stiffness K, N/mᵖ
 * @param exponent p
 * @param damping c, s/m
 */
public record Bumper(double stiffness, double exponent, double damping) {
    public Bumper {
        if (!(stiffness > 0) || !(exponent > 0) || !(damping >= 0)) {
            throw new IllegalArgumentException("stiffness and exponent are above zero, damping not below");
        }
    }

    /** One that gives back this share of the speed (0 to 1) to a free mass that comes with the reference speed, m/s. */
    public static Bumper givingBack(double stiffness, double exponent, double restitution, double referenceSpeed) {
        return new Bumper(stiffness, exponent, Restitution.dampingNumber(restitution) / referenceSpeed);
    }

    /** Force (N) at a compression (m) and a speed into the bumper (m/s). */
    double force(double compression, double speed) {
        if (compression <= 0) {
            return 0;
        }
        return stiffness * Math.pow(compression, exponent) * Math.max(0, 1 + damping * speed);
    }

    /** Elastic energy, J. */
    double energy(double compression) {
        if (compression <= 0) {
            return 0;
        }
        return stiffness * Math.pow(compression, exponent + 1) / (exponent + 1);
    }

    /** Deepest compression (m) under a free mass (kg) that comes with this speed (m/s). */
    public double deepest(double mass, double speed) {
        double d = damping * speed;
        double work =
                d < 1e-4 ? speed * speed * (0.5 - d / 3 + d * d / 4) : speed * speed * (d - Math.log1p(d)) / (d * d);
        return Math.pow((exponent + 1) * mass * work / stiffness, 1 / (exponent + 1));
    }
}
