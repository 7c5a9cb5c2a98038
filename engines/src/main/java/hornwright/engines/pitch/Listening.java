package hornwright.engines.pitch;

import hornwright.engines.numerics.Fourier;
import java.util.ArrayList;
import java.util.List;

/**
 * Looks at a recording every 10 ms. The period is the first delay at which the sound nearly repeats (YIN: squared
 * difference over its running mean); it is then followed out to as many periods as the window holds, where the same
 * error in samples counts for less.
 */
final class Listening {
    static final double HOP_S = 0.010;

    private static final double LOWEST = 50;
    private static final double HIGHEST = 2000;
    /** Sound compared with itself: with the longest delay it fills 46 ms. */
    private static final double WINDOW_S = 0.026;

    private static final double LEVEL_S = 0.020;
    private static final double GOOD_DIP = 0.15;
    private static final double POOR_DIP = 0.35;

    private final double[] x;
    private final double rate;
    private final int window;
    private final int longest;
    private final int shortest;
    private final Fourier fourier;
    private final double[] re;
    private final double[] im;
    private final double[] squares;
    private final double[] difference;
    private final Partials partials;

    private Listening(Recording recording) {
        x = recording.samples();
        rate = recording.rate();
        window = (int) (WINDOW_S * rate);
        longest = (int) Math.ceil(rate / LOWEST) + 1;
        shortest = Math.max(2, (int) Math.floor(rate / HIGHEST));
        fourier = new Fourier(Integer.highestOneBit(window + longest) * 2);
        re = new double[fourier.size()];
        im = new double[fourier.size()];
        difference = new double[longest + 1];
        squares = new double[x.length + 1];
        for (int i = 0; i < x.length; i++) {
            squares[i + 1] = squares[i] + x[i] * x[i];
        }
        partials = new Partials(rate, window + longest);
    }

    static List<Frame> to(Recording recording) {
        Listening listening = new Listening(recording);
        List<Frame> frames = new ArrayList<>();
        int span = listening.window + listening.longest;
        for (int i = 0; ; i++) {
            int middle = (int) Math.round(i * HOP_S * recording.rate());
            if (middle >= recording.samples().length) {
                return frames;
            }
            int from = Math.clamp(middle - span / 2L, 0, Math.max(0, recording.samples().length - span));
            frames.add(listening.look(middle, from, span));
        }
    }

    private Frame look(int middle, int from, int span) {
        double level = level(middle);
        if (from + span > x.length || power(from, from + span) == 0) {
            return new Frame(middle / rate, Double.NaN, level, false);
        }
        differences(from);
        int period = period();
        if (period == 0) {
            return new Frame(middle / rate, Double.NaN, level, false);
        }
        double frequency = rate / followed(period);
        return new Frame(middle / rate, frequency, level, partials.lackFundamental(x, from, frequency));
    }

    private double level(int middle) {
        int half = (int) (LEVEL_S * rate / 2);
        int from = Math.max(0, middle - half);
        int to = Math.min(x.length, middle + half);
        return 10 * Math.log10(power(from, to) / Math.max(1, to - from) + 1e-20);
    }

    private double power(int from, int to) {
        return squares[to] - squares[from];
    }

    /** d(t) = sum over the window of (x[j] - x[j + t])², by one transform of the short and the long piece together. */
    private void differences(int from) {
        java.util.Arrays.fill(re, 0);
        java.util.Arrays.fill(im, 0);
        System.arraycopy(x, from, re, 0, window);
        System.arraycopy(x, from, im, 0, window + longest);
        fourier.forward(re, im);
        correlate();
        fourier.inverse(re, im);
        double own = power(from, from + window);
        for (int t = 0; t <= longest; t++) {
            difference[t] = Math.max(0, own + power(from + t, from + t + window) - 2 * re[t]);
        }
    }

    /** Unpicks the spectra A of the short and B of the long piece from A + iB, and leaves conj(A) B. */
    private void correlate() {
        int n = fourier.size();
        for (int k = 0; k <= n / 2; k++) {
            int m = (n - k) % n;
            double aRe = (re[k] + re[m]) / 2;
            double aIm = (im[k] - im[m]) / 2;
            double bRe = (im[k] + im[m]) / 2;
            double bIm = (re[m] - re[k]) / 2;
            double real = aRe * bRe + aIm * bIm;
            double imaginary = aRe * bIm - aIm * bRe;
            re[k] = real;
            im[k] = imaginary;
            re[m] = real;
            im[m] = -imaginary;
        }
    }

    /** Whole samples of the shortest convincing period; 0 when nothing repeats. */
    private int period() {
        double sum = 0;
        int best = 0;
        double bestDip = POOR_DIP;
        for (int t = 1; t < longest; t++) {
            sum += difference[t];
            double dip = sum > 0 ? difference[t] * t / sum : 1;
            if (t >= shortest && dip < bestDip && difference[t] <= difference[t + 1]) {
                best = t;
                bestDip = dip;
                if (dip < GOOD_DIP) {
                    return best;
                }
            }
        }
        return best;
    }

    /** The period in samples, read at the farthest repeat that can be found by doubling. */
    private double followed(int first) {
        int periods = 1;
        double period = dipNear(first, 1);
        while (2 * periods * period + 2 < longest) {
            double farther = dipNear(2 * periods * period, Math.max(1, (int) (0.02 * periods * period)));
            if (Double.isNaN(farther)) {
                break;
            }
            periods *= 2;
            period = farther / periods;
        }
        return period;
    }

    /** Where the difference is least within reach of a delay, between samples; NaN at the edge of the reach. */
    private double dipNear(double delay, int reach) {
        int at = (int) Math.round(delay);
        if (at + reach >= longest) {
            return reach == 1 ? delay : Double.NaN;
        }
        int least = at;
        for (int t = at - reach; t <= at + reach; t++) {
            least = difference[t] < difference[least] ? t : least;
        }
        double left = difference[least - 1];
        double right = difference[least + 1];
        double curve = left - 2 * difference[least] + right;
        boolean isDip = left >= difference[least] && right >= difference[least];
        if (!isDip || (reach > 1 && Math.abs(least - at) == reach)) {
            return reach == 1 ? least : Double.NaN;
        }
        return curve > 0 ? least + (left - right) / (2 * curve) : least;
    }
}
