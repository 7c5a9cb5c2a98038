package hornwright.engines.air;

/**
 * A plane wave in a round tube with friction and heat flow at the wall (Zwikker and Kosten).
 *
 * @param propagation Γ, 1/m: a wave runs as e^{-Γx}
 * @param specific characteristic impedance times cross-section, Pa s/m (ρc without losses)
 */
record TubeWave(Complex propagation, Complex specific) {
    /** Above this W the asymptotic series is good to 3e-7, below it the continued fraction to 1e-12. */
    private static final double WIDE = 12;

    private static final int LEVELS = 26;
    private static final double HALF_ROOT = Math.sqrt(0.5);

    /** Terms of I1(W)/I0(W) in 1/W, from the Riccati equation y' = 1 - y/W - y². */
    private static final double[] RATIO = {1, -1 / 2.0, -1 / 8.0, -1 / 8.0, -25 / 128.0, -13 / 32.0, -1073 / 1024.0};

    static TubeWave of(Air air, double omega, double radius, boolean losses) {
        if (!losses) {
            return new TubeWave(Complex.imaginary(omega / air.speed()), new Complex(air.impedance(), 0));
        }
        double viscous = radius * Math.sqrt(omega * air.density() / air.viscosity());
        Complex friction = Complex.ONE.minus(boundary(viscous));
        Complex heat =
                boundary(viscous * air.prandtlRoot()).times(air.gamma() - 1).plus(1);
        Complex slowness = heat.over(friction).root();
        Complex specific = friction.times(slowness).inverse().times(air.impedance());
        return new TubeWave(slowness.turned().times(omega / air.speed()), specific);
    }

    /** F = 2 J1(z)/(z J0(z)) at z = r e^{-jπ/4}, that is 2 I1(W)/(W I0(W)) at W = r e^{jπ/4}. */
    static Complex boundary(double r) {
        return r < WIDE ? fraction(r) : series(r);
    }

    /** Gauss's continued fraction 2/(2 + W²/(4 + W²/(6 + …))), where W² = j r². */
    private static Complex fraction(double r) {
        double square = r * r;
        double re = 2.0 * LEVELS;
        double im = 0;
        for (int level = LEVELS - 1; level >= 1; level--) {
            double size = square / (re * re + im * im);
            double next = im * size + 2.0 * level;
            im = re * size;
            re = next;
        }
        double size = 2 / (re * re + im * im);
        return new Complex(re * size, -im * size);
    }

    private static Complex series(double r) {
        double qr = HALF_ROOT / r;
        double qi = -HALF_ROOT / r;
        double re = RATIO[RATIO.length - 1];
        double im = 0;
        for (int i = RATIO.length - 2; i >= 0; i--) {
            double next = re * qr - im * qi + RATIO[i];
            im = re * qi + im * qr;
            re = next;
        }
        return new Complex(2 * (re * qr - im * qi), 2 * (re * qi + im * qr));
    }
}
