package hornwright.engines.air;

import java.util.function.DoubleUnaryOperator;

/** Roots between two ends of different sign. */
final class Root {
    private static final int MOST = 100;

    private Root() {}

    /** A root in [a, b] to within {@code width}, by false position that halves an end which will not move. */
    static double between(DoubleUnaryOperator f, double a, double fa, double b, double fb, double width) {
        double lo = a;
        double hi = b;
        double flo = fa;
        double fhi = fb;
        double last = Double.NaN;
        for (int i = 0; i < MOST && Math.abs(hi - lo) > width; i++) {
            double x = hi - fhi * (hi - lo) / (fhi - flo);
            if (!(x > Math.min(lo, hi) && x < Math.max(lo, hi))) {
                x = (lo + hi) / 2;
            }
            double fx = f.applyAsDouble(x);
            if (fx == 0 || Math.abs(x - last) < width) {
                return x;
            }
            last = x;
            if (fx * fhi < 0) {
                lo = hi;
                flo = fhi;
            } else {
                flo /= 2;
            }
            hi = x;
            fhi = fx;
        }
        return hi;
    }
}
