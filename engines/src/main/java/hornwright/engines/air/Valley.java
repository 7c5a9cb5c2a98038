package hornwright.engines.air;

/**
 * The minimum of |Y|² inside a bracket. Y is analytic in frequency, so a parabola through three complex values is followed
 * to where the slope of its |Y|² is zero; a step that leaves the bracket is replaced by a golden section.
 */
final class Valley {
    /** Steps below this end the search, Hz; the last step's error is far smaller. */
    private static final double ENOUGH = 2e-6;

    private static final int MOST = 60;
    private static final double GOLDEN = 0.381966;

    private final Response response;
    private final double[] f;
    private final Complex[] y;

    Valley(Response response, double[] f, Complex[] y) {
        this.response = response;
        this.f = f.clone();
        this.y = y.clone();
    }

    Complex admittance() {
        return y[1];
    }

    /** The frequency of the minimum; afterwards {@link #admittance()} is the value there. */
    double bottom() {
        for (int i = 0; i < MOST; i++) {
            double at = inside(i % 6 == 5 ? Double.NaN : followed());
            if (Math.abs(at - f[1]) < ENOUGH) {
                move(at);
                return f[1];
            }
            move(at);
            if (f[2] - f[0] < ENOUGH) {
                return f[1];
            }
        }
        return f[1];
    }

    private double inside(double proposed) {
        if (proposed > f[0] && proposed < f[2]) {
            return proposed;
        }
        boolean right = f[2] - f[1] > f[1] - f[0];
        return right ? f[1] + GOLDEN * (f[2] - f[1]) : f[1] - GOLDEN * (f[1] - f[0]);
    }

    private void move(double at) {
        Complex value = response.admittance(at);
        if (value.squared() <= y[1].squared()) {
            int end = at > f[1] ? 0 : 2;
            f[end] = f[1];
            y[end] = y[1];
            f[1] = at;
            y[1] = value;
        } else {
            int end = at > f[1] ? 2 : 0;
            f[end] = at;
            y[end] = value;
        }
    }

    /** Zero of the slope of |c0 + c1 x + c2 x²|², x counted from the middle. */
    private double followed() {
        double left = f[0] - f[1];
        double right = f[2] - f[1];
        Complex toLeft = y[0].minus(y[1]).times(1 / left);
        Complex toRight = y[2].minus(y[1]).times(1 / right);
        Complex c2 = toRight.minus(toLeft).times(1 / (right - left));
        Complex c1 = toRight.minus(c2.times(right));
        Complex c0 = y[1];
        double k1 = 2 * dot(c0, c1);
        double k2 = 2 * (c1.squared() + 2 * dot(c0, c2));
        double k3 = 6 * dot(c1, c2);
        double k4 = 4 * c2.squared();
        double x = 0;
        for (int i = 0; i < 8; i++) {
            double slope = k1 + x * (k2 + x * (k3 + x * k4));
            double bend = k2 + x * (2 * k3 + 3 * x * k4);
            x -= slope / bend;
        }
        return f[1] + x;
    }

    private static double dot(Complex a, Complex b) {
        return a.re() * b.re() + a.im() * b.im();
    }
}
