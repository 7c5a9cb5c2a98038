package hornwright.engines.seat;

import java.util.Arrays;

/**
 * One smooth stretch of the ring: offset + slope·φ + Σ (cos[n] cos nφ + sin[n] sin nφ) on [from, to]. Finds its own
 * turning points and crossings exactly, so that integrals never straddle a kink. Multiples of the angle come by turning one
 * step at a time, which costs two trigonometric functions a value instead of two a wave.
 */
record Wave(double from, double to, double offset, double slope, double[] cos, double[] sin) {
    private static final double NARROWEST = 1e-5;

    double value(double angle) {
        double c = Math.cos(angle);
        double s = Math.sin(angle);
        double cn = 1;
        double sn = 0;
        double sum = offset + slope * angle;
        for (int n = 1; n < cos.length; n++) {
            double next = cn * c - sn * s;
            sn = sn * c + cn * s;
            cn = next;
            sum += cos[n] * cn + sin[n] * sn;
        }
        return sum;
    }

    private double first(double angle) {
        double c = Math.cos(angle);
        double s = Math.sin(angle);
        double cn = 1;
        double sn = 0;
        double sum = slope;
        for (int n = 1; n < cos.length; n++) {
            double next = cn * c - sn * s;
            sn = sn * c + cn * s;
            cn = next;
            sum += n * (sin[n] * cn - cos[n] * sn);
        }
        return sum;
    }

    private double second(double angle) {
        double c = Math.cos(angle);
        double s = Math.sin(angle);
        double cn = 1;
        double sn = 0;
        double sum = 0;
        for (int n = 1; n < cos.length; n++) {
            double next = cn * c - sn * s;
            sn = sn * c + cn * s;
            cn = next;
            sum -= (double) n * n * (cos[n] * cn + sin[n] * sn);
        }
        return sum;
    }

    int order() {
        return cos.length - 1;
    }

    /** The same stretch raised by a constant and by a tilt. */
    Wave moved(double rise, double tiltCos, double tiltSin) {
        double[] c = cos.clone();
        double[] s = sin.clone();
        c[1] += tiltCos;
        s[1] += tiltSin;
        return new Wave(from, to, offset + rise, slope, c, s);
    }

    /** Both ends and every turning point between, ascending. */
    double[] turns() {
        Marks marks = new Marks();
        marks.add(from);
        double[] bounds = bounds();
        if (bounds[0] > 0) {
            searchTurns(from, to, bounds[0], bounds[1], marks);
        }
        marks.add(to);
        return marks.sorted();
    }

    /** Ends, turning points and every crossing of the given levels, ascending. */
    double[] cuts(double[] levels) {
        double[] turns = turns();
        Marks marks = new Marks();
        marks.add(turns[0]);
        for (int i = 1; i < turns.length; i++) {
            double left = value(turns[i - 1]);
            double right = value(turns[i]);
            for (double level : levels) {
                if ((left - level) * (right - level) < 0) {
                    marks.add(crossing(turns[i - 1], turns[i], level));
                }
            }
            marks.add(turns[i]);
        }
        return marks.sorted();
    }

    /** Bounds of the second and the third derivative. */
    private double[] bounds() {
        double two = 0;
        double three = 0;
        for (int n = 1; n < cos.length; n++) {
            double size = Math.hypot(cos[n], sin[n]);
            two += n * n * size;
            three += (double) n * n * n * size;
        }
        return new double[] {two, three};
    }

    /**
     * Halves [a, b] until the derivative provably has no zero or is provably monotone; a stretch too narrow to tell is
     * as flat as rounding, and a cut there does no harm.
     */
    private void searchTurns(double a, double b, double two, double three, Marks marks) {
        double middle = (a + b) / 2;
        double half = (b - a) / 2;
        if (Math.abs(first(middle)) > two * half) {
            return;
        }
        if (Math.abs(second(middle)) > three * half) {
            if (first(a) * first(b) < 0) {
                marks.add(turn(a, b));
            } else if (first(b) == 0) {
                marks.add(b);
            }
        } else if (half < NARROWEST) {
            marks.add(middle);
        } else {
            searchTurns(a, middle, two, three, marks);
            searchTurns(middle, b, two, three, marks);
        }
    }

    private double turn(double a, double b) {
        boolean rising = first(b) > 0;
        double low = a;
        double high = b;
        double x = (a + b) / 2;
        for (int i = 0; i < 60; i++) {
            double f = first(x);
            if (f > 0 == rising) {
                high = x;
            } else {
                low = x;
            }
            double next = x - f / second(x);
            next = next > low && next < high ? next : (low + high) / 2;
            if (Math.abs(next - x) < 1e-15) {
                return next;
            }
            x = next;
        }
        return x;
    }

    private double crossing(double a, double b, double level) {
        boolean rising = value(b) > level;
        double low = a;
        double high = b;
        double x = (a + b) / 2;
        for (int i = 0; i < 60; i++) {
            double f = value(x) - level;
            if (f > 0 == rising) {
                high = x;
            } else {
                low = x;
            }
            double next = x - f / first(x);
            next = next > low && next < high ? next : (low + high) / 2;
            if (Math.abs(next - x) < 1e-15) {
                return next;
            }
            x = next;
        }
        return x;
    }

    private static final class Marks {
        private double[] at = new double[8];
        private int count;

        void add(double angle) {
            if (count == at.length) {
                at = Arrays.copyOf(at, 2 * count);
            }
            at[count++] = angle;
        }

        double[] sorted() {
            double[] all = Arrays.copyOf(at, count);
            Arrays.sort(all);
            return all;
        }
    }
}
