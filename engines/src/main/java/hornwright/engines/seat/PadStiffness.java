package hornwright.engines.seat;

/**
 * Two straight lines: the skin gives first, then the felt takes over. Stiffness is force per length of rim and
 * compression (N/m per m, so Pa). Real felt stiffens smoothly; take both lines from a measured curve.
 *
 * @param skin stiffness of the first line, Pa
 * @param depth compression at which the second line starts, m; infinite for one line only
 * @param felt stiffness of the second line, Pa
 */
public record PadStiffness(double skin, double depth, double felt) {
    public PadStiffness {
        if (!(skin > 0) || !(felt > 0) || !(depth >= 0)) {
            throw new IllegalArgumentException("stiffness is above zero, depth not below");
        }
    }

    /** The same stiffness at every depth. */
    public static PadStiffness even(double stiffness) {
        return new PadStiffness(stiffness, Double.POSITIVE_INFINITY, stiffness);
    }

    boolean isEven() {
        return Double.isInfinite(depth) || skin == felt;
    }

    /** Compressions at which the pressure bends. */
    double[] bends() {
        return isEven() ? new double[] {0} : new double[] {0, depth};
    }

    /** Force per length of rim, N/m. */
    double pressure(double compression) {
        if (compression <= 0) {
            return 0;
        }
        return compression <= depth ? skin * compression : skin * depth + felt * (compression - depth);
    }

    /** Rise of pressure with compression, Pa. */
    double slope(double compression) {
        if (compression <= 0) {
            return 0;
        }
        return compression <= depth ? skin : felt;
    }

    /** Work stored per length of rim, N. */
    double energy(double compression) {
        if (compression <= 0) {
            return 0;
        }
        if (compression <= depth) {
            return skin * compression * compression / 2;
        }
        double beyond = compression - depth;
        return skin * depth * depth / 2 + skin * depth * beyond + felt * beyond * beyond / 2;
    }
}
