package hornwright.engines.action;

import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * How much speed a bump gives back, and the damping that does it.
 *
 * <p>For the force K xᵖ (1 + c v) on a free mass the speed given back depends on D = c v alone, whatever K and p are:
 * D (1 + e) = ln[(1 + D)/(1 − e D)]. The usual short cut D = 1.5 (1 − e) is half of the truth at e = 0.5.
 */
public final class Restitution {
    /** A strongly damped bump gives back e = 1/D but for less than rounding. */
    private static final double DEAD = 1 - 1e-15;

    private Restitution() {}

    /** Share of the speed given back (0 to 1) at a damping number D ≥ 0; error 1e-13. */
    public static double at(double dampingNumber) {
        if (dampingNumber < 1e-9) {
            return 1 - 2 * dampingNumber / 3;
        }
        double most = Math.min(1, DEAD / dampingNumber);
        return balance(dampingNumber, most) <= 0
                ? most
                : new BracketingNthOrderBrentSolver(1e-15, 1e-16, 5)
                        .solve(200, e -> balance(dampingNumber, e), 0, most);
    }

    /** Damping number that gives back this share of the speed, above 0 and below 1; relative error 1e-12. */
    public static double dampingNumber(double restitution) {
        if (!(restitution > 0 && restitution < 1)) {
            throw new IllegalArgumentException("a restitution lies between 0 and 1, not " + restitution);
        }
        double linear = 1.5 * (1 - restitution);
        if (1 - restitution < 1e-7) {
            return linear;
        }
        double most = DEAD / restitution;
        return balance(most, restitution) <= 0
                ? most
                : new BracketingNthOrderBrentSolver(1e-15, 1e-16, 5)
                        .solve(200, d -> balance(d, restitution), linear / 2, most);
    }

    /** Rises with e and with D through zero where the two belong together; by its power series where that is exact. */
    private static double balance(double d, double e) {
        if (d >= 0.1) {
            return (Math.log1p(d) - Math.log1p(-e * d) - d * (1 + e)) / (d * d);
        }
        double sum = 0;
        for (int k = 20; k >= 2; k--) {
            sum = sum * d + (Math.pow(e, k) - Math.pow(-1, k)) / k;
        }
        return sum;
    }

    /**
     * What a material with this loss factor gives back, by a spring and a dashpot side by side that let go when they would
     * pull (ζ = η/2 below 1). An estimate: nobody has published the figure for cork or felt feet.
     */
    public static double ofLossFactor(double lossFactor) {
        double zeta = lossFactor / 2;
        if (!(zeta >= 0 && zeta < 1)) {
            throw new IllegalArgumentException("a loss factor lies between 0 and 2, not " + lossFactor);
        }
        return Math.exp(-2 * zeta * Math.acos(zeta) / Math.sqrt(1 - zeta * zeta));
    }
}
