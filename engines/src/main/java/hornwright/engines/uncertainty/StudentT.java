package hornwright.engines.uncertainty;

import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.special.Beta;
import org.hipparchus.special.Erf;

/** Student's distribution and its limit. */
final class StudentT {
    private StudentT() {}

    /** Half-width that holds this share (0 to 1) about the middle; infinite degrees of freedom give the normal's. */
    static double halfWidth(double share, double dof) {
        double normal = Math.sqrt(2) * Erf.erfInv(share);
        if (Double.isInfinite(dof)) {
            return normal;
        }
        double high = normal + 1;
        while (inside(high, dof) < share) {
            high *= 2;
        }
        return new BracketingNthOrderBrentSolver(1e-14, 1e-14, 5).solve(500, t -> inside(t, dof) - share, 0, high);
    }

    /** Share within ±t; the two forms keep figures on either side of one. */
    private static double inside(double t, double dof) {
        double square = t * t;
        return square < dof
                ? Beta.regularizedBeta(square / (dof + square), 0.5, dof / 2)
                : 1 - Beta.regularizedBeta(dof / (dof + square), dof / 2, 0.5);
    }
}
