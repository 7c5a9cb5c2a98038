package hornwright.engines.air;

/**
 * What an opening feels of the air outside.
 *
 * <p>Open ends: the causal fits of Silva et al., J. Sound Vib. 322, 2009. Rims and pads: Dalmont, Nederveen and Joly,
 * J. Sound Vib. 244, 2001; a pad not smaller than its rim, standing at least a tenth of the hole radius high, is good to
 * 5 %, and to 1.5 % from three tenths up.
 */
final class Radiation {
    private static final double UNFLANGED = 0.6133;
    private static final double FLANGED = 0.8216;

    private Radiation() {}

    /** Impedance (Pa s/m³) of the open end of the bore. */
    static Complex bell(Air air, double omega, double radius, AirInput.Bell bell) {
        double k = omega / air.speed();
        Complex reflection =
                reflection(bell.end(), k * radius).times(Complex.exp(Complex.imaginary(-2 * k * bell.extra())));
        Complex ratio = reflection.plus(1).over(Complex.ONE.minus(reflection));
        return ratio.times(air.impedance() / (Math.PI * radius * radius));
    }

    /** Pressure reflection at the end of a pipe, ka the wave number times the radius. */
    static Complex reflection(AirInput.End end, double ka) {
        return switch (end) {
            case UNFLANGED -> causal(ka, 0.167, 1.393, 0.457);
            case FLANGED -> causal(ka, 0.182, 1.825, 0.649);
            case IDEAL -> new Complex(-1, 0);
        };
    }

    private static Complex causal(double ka, double n1, double d1, double d2) {
        Complex above = new Complex(-1, -n1 * ka);
        return above.over(new Complex(1 - d2 * ka * ka, d1 * ka));
    }

    /** Length (m) added by the outside to a hole with a flat rim of this thickness and nothing above. */
    static double rim(double radius, double wall) {
        double x = radius / (radius + wall);
        return radius * (FLANGED + x * (UNFLANGED - FLANGED) + 0.057 * x * (1 - Math.pow(x, 5)));
    }

    /** Length (m) added by the outside to a hole under a pad that stands at {@code height}. */
    static double pad(double radius, double wall, double padRadius, double height) {
        return rim(radius, wall) + radius / lift(radius, wall, padRadius, height);
    }

    /** Change of that length per height. */
    static double padSlope(double radius, double wall, double padRadius, double height) {
        double near = near(radius, wall, height);
        double far = far(padRadius, height);
        double slope = near * (0.8 / height - 0.4 / (height + 3 * wall)) + far * 2.6 / height;
        double lift = near + far;
        return -radius * slope / (lift * lift);
    }

    private static double lift(double radius, double wall, double padRadius, double height) {
        return near(radius, wall, height) + far(padRadius, height);
    }

    private static double near(double radius, double wall, double height) {
        double h = height / radius;
        return 3.5 * Math.pow(h, 0.8) * Math.pow(h + 3 * wall / radius, -0.4);
    }

    private static double far(double padRadius, double height) {
        return 30 * Math.pow(height / padRadius, 2.6);
    }
}
