package hornwright.engines.spring;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.differentiation.UnivariateDerivative1;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.special.elliptic.carlson.CarlsonEllipticIntegral;

/**
 * A thin straight beam clamped at its root, bent by a load at its tip that keeps its direction; everything in units of
 * the length and of EI.
 *
 * <p>With the tip turned by φ, m = (1 + sin φ)/2 and sin²ψ = sin φ/(1 + sin φ), measured back from the tip,
 * √load = ∫₀^ψ du/√(1 − m cos²u) and deflection = ∫₀^ψ (sin φ − 2m sin²u) du/√(1 − m cos²u) / √load. Written from the
 * tip the integrals lose nothing to cancellation, however small the load. The unknown is ln tan φ, which resolves both
 * ends of the range. Relative error about 1e-12.
 *
 * @param load P L²/(EI)
 * @param deflection of the tip across the free beam, as a share of the length
 * @param rate rise of load with deflection
 * @param tipAngle rad
 * @param reach distance of the load's line from the root, as a share of the length
 */
record Elastica(double load, double deflection, double rate, double tipAngle, double reach) {
    /** From here on the tip lies along the load but for exp(-100), and closed forms hold to rounding. */
    private static final double ROOT_OF_STRONG = 100;

    private static final double SLIGHT = -60;
    private static final double TIP_LOSS = 2 - Math.sqrt(2);

    /** Bent by this load. */
    static Elastica under(double load) {
        if (load == 0) {
            return new Elastica(0, 0, 3, 0, 1);
        }
        double root = Math.sqrt(load);
        return root >= ROOT_OF_STRONG ? strong(root) : at(solve(y -> Math.log(rootOfLoad(y) / root)));
    }

    /** Bent until its tip is deflected by this share of its length, below 1. */
    static Elastica bentTo(double deflection) {
        if (!(deflection < 1)) {
            throw new IllegalArgumentException("the tip moves by less than the length of the spring");
        }
        if (deflection == 0) {
            return under(0);
        }
        double rest = 1 - deflection;
        if (rest <= TIP_LOSS / ROOT_OF_STRONG) {
            return strong(TIP_LOSS / rest);
        }
        return at(solve(y -> Math.log(at(y).deflection / deflection)));
    }

    private static Elastica strong(double root) {
        double load = root * root;
        double deflection = 1 - TIP_LOSS / root;
        return new Elastica(load, deflection, 2 * load * root / TIP_LOSS, Math.PI / 2, Math.sqrt(2) / root);
    }

    private static double solve(UnivariateFunction rising) {
        double high = ROOT_OF_STRONG + 10;
        return new BracketingNthOrderBrentSolver(1e-15, 1e-15, 1e-15, 5).solve(500, rising, SLIGHT, high);
    }

    private static double rootOfLoad(double logTangent) {
        return Math.sqrt(at(logTangent).load);
    }

    /** The beam whose tip has turned by the angle with this logarithm of its tangent. */
    private static Elastica at(double logTangent) {
        UnivariateDerivative1 y = new UnivariateDerivative1(logTangent, 1);
        UnivariateDerivative1 sin = y.multiply(-2).exp().add(1).sqrt().reciprocal();
        UnivariateDerivative1 cosSquare = y.multiply(2).exp().add(1).reciprocal();
        UnivariateDerivative1 rest = cosSquare.divide(sin.add(1)).multiply(0.5);
        UnivariateDerivative1 twoM = sin.add(1);
        UnivariateDerivative1 sinSquare = sin.divide(twoM);
        UnivariateDerivative1 near = rest.divide(twoM);
        UnivariateDerivative1 middle = rest.add(sin.multiply(0.5));
        UnivariateDerivative1 psi = sinSquare.sqrt();
        UnivariateDerivative1 root = psi.multiply(CarlsonEllipticIntegral.rF(near, middle, rest));
        UnivariateDerivative1 tip = rest.multiply(psi)
                .multiply(sinSquare)
                .multiply(CarlsonEllipticIntegral.rD(near, middle, rest))
                .divide(3);
        UnivariateDerivative1 deflection = sin.subtract(twoM.multiply(tip).divide(root));
        UnivariateDerivative1 load = root.multiply(root);
        return new Elastica(
                load.getValue(),
                deflection.getValue(),
                load.getFirstDerivative() / deflection.getFirstDerivative(),
                Math.atan(Math.exp(logTangent)),
                Math.sqrt(2 * sin.getValue()) / root.getValue());
    }
}
