package hornwright.engines.numerics;

import java.util.Arrays;

/**
 * A smooth curve through points that never overshoots them: between two points it rises, falls or stays as they do.
 * Piecewise cubic; the slope at an inner point is that of the parabola through it and its neighbours, drawn back into
 * the circle of radius 3 within which a cubic is monotone. Between points there is no error to state: the truth may run
 * anywhere between them.
 *
 * <p>Source: Fritsch and Carlson, Monotone piecewise cubic interpolation, SIAM Journal on Numerical Analysis 17, 1980.
 */
public final class MonotoneCubic {
    private static final double RADIUS = 3;

    private final double[] x;
    private final double[] y;
    private final double[] slope;

    /** @param x strictly rising, two points at least
     *  @param y as many as x */
    public MonotoneCubic(double[] x, double[] y) {
        if (x.length < 2 || x.length != y.length) {
            throw new IllegalArgumentException(
                    "a curve needs two points at least, not %d and %d".formatted(x.length, y.length));
        }
        this.x = x.clone();
        this.y = y.clone();
        double[] secant = new double[x.length - 1];
        for (int i = 0; i < secant.length; i++) {
            if (!(x[i + 1] > x[i])) {
                throw new IllegalArgumentException("x must rise: %s is followed by %s".formatted(x[i], x[i + 1]));
            }
            secant[i] = (y[i + 1] - y[i]) / (x[i + 1] - x[i]);
        }
        slope = ofParabolas(this.x, secant);
        drawBack(slope, secant);
    }

    private static double[] ofParabolas(double[] x, double[] secant) {
        int last = secant.length;
        double[] slope = new double[last + 1];
        if (last == 1) {
            Arrays.fill(slope, secant[0]);
            return slope;
        }
        for (int i = 1; i < last; i++) {
            double before = x[i] - x[i - 1];
            double after = x[i + 1] - x[i];
            slope[i] = (after * secant[i - 1] + before * secant[i]) / (before + after);
        }
        slope[0] = 2 * secant[0] - slope[1];
        slope[last] = 2 * secant[last - 1] - slope[last - 1];
        return slope;
    }

    private static void drawBack(double[] slope, double[] secant) {
        for (int i = 0; i < secant.length; i++) {
            slope[i] = withThe(secant[i], slope[i]);
            slope[i + 1] = withThe(secant[i], slope[i + 1]);
            double length = Math.hypot(slope[i], slope[i + 1]);
            double longest = RADIUS * Math.abs(secant[i]);
            if (length > longest) {
                slope[i] *= longest / length;
                slope[i + 1] *= longest / length;
            }
        }
    }

    /** A slope against its secant would overshoot. */
    private static double withThe(double secant, double slope) {
        return slope * secant > 0 ? slope : 0;
    }

    /** @throws IllegalArgumentException outside the points: nothing is extrapolated */
    public double at(double where) {
        if (!(where >= x[0] && where <= x[x.length - 1])) {
            throw new IllegalArgumentException("%s lies outside %s to %s".formatted(where, x[0], x[x.length - 1]));
        }
        int found = Arrays.binarySearch(x, where);
        if (found >= 0) {
            return y[found];
        }
        int i = -found - 2;
        double width = x[i + 1] - x[i];
        double t = (where - x[i]) / width;
        double u = 1 - t;
        double value = u * u * (1 + 2 * t) * y[i]
                + t * t * (1 + 2 * u) * y[i + 1]
                + t * u * width * (u * slope[i] - t * slope[i + 1]);
        return Math.clamp(value, Math.min(y[i], y[i + 1]), Math.max(y[i], y[i + 1]));
    }

    /** Slopes at the points, for a second way of drawing the curve. */
    double[] slopes() {
        return slope.clone();
    }
}
