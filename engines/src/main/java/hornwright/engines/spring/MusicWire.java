package hornwright.engines.spring;

/**
 * Least tensile strength of cold-drawn high-carbon spring wire by diameter; thinner wire is drawn harder. Values of ASTM
 * A228 as quoted in published tables; between the sizes strength falls evenly with the logarithm of the diameter. A blued
 * needle of unknown making may be weaker.
 */
public final class MusicWire {
    private static final double INCH = 0.0254;
    private static final double KSI = 6.894757293168e6;
    private static final double[] INCHES = {0.010, 0.020, 0.030, 0.032, 0.040, 0.051, 0.063};
    private static final double[] KSIS = {387, 350, 330, 327, 315, 303, 293};

    private MusicWire() {}

    /** Strength in Pa at a diameter in m; NaN outside 0.254 to 1.6 mm. */
    public static double strength(double diameter) {
        double inches = diameter / INCH;
        int last = INCHES.length - 1;
        if (!(inches >= INCHES[0] - 1e-12 && inches <= INCHES[last] + 1e-12)) {
            return Double.NaN;
        }
        int above = 1;
        while (above < last && INCHES[above] < inches) {
            above++;
        }
        double share = Math.log(inches / INCHES[above - 1]) / Math.log(INCHES[above] / INCHES[above - 1]);
        return KSI * (KSIS[above - 1] + share * (KSIS[above] - KSIS[above - 1]));
    }
}
