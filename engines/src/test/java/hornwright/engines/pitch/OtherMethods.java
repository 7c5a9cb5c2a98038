package hornwright.engines.pitch;

/** Two ways to find a pitch that share nothing with the engine's: normalised correlation, and a long spectrum. */
final class OtherMethods {
    private OtherMethods() {}

    /** P. McLeod and G. Wyvill, A smarter way to find pitch, 2005: the first high peak of 2 sum xy / sum (x² + y²). */
    static double byCorrelation(double[] x, double rate, int from, int window) {
        int longest = (int) (rate / 50);
        double[] n = new double[longest];
        double highest = 0;
        for (int t = 2; t < longest; t++) {
            double product = 0;
            double power = 0;
            for (int j = from; j < from + window - t; j++) {
                product += x[j] * x[j + t];
                power += x[j] * x[j] + x[j + t] * x[j + t];
            }
            n[t] = 2 * product / power;
            highest = n[t - 1] < 0 || highest > 0 ? Math.max(highest, n[t]) : highest;
        }
        boolean below = false;
        for (int t = 3; t < longest - 1; t++) {
            below |= n[t] < 0;
            if (below && n[t] >= 0.95 * highest && n[t] >= n[t - 1] && n[t] >= n[t + 1]) {
                double offset = 0.5 * (n[t - 1] - n[t + 1]) / (n[t - 1] - 2 * n[t] + n[t + 1]);
                return rate / (t + offset);
            }
        }
        return Double.NaN;
    }

    /** The frequency near a guess at which a long faded piece of sound is strongest, by ternary search. */
    static double bySpectrum(double[] x, double rate, int from, int length, double guess) {
        double low = guess * 0.99;
        double high = guess * 1.01;
        while (high - low > 1e-7 * guess) {
            double third = (high - low) / 3;
            if (strength(x, rate, from, length, low + third) < strength(x, rate, from, length, high - third)) {
                low += third;
            } else {
                high -= third;
            }
        }
        return (low + high) / 2;
    }

    private static double strength(double[] x, double rate, int from, int length, double frequency) {
        double re = 0;
        double im = 0;
        for (int i = 0; i < length; i++) {
            double fade = 0.5 - 0.5 * Math.cos(2 * Math.PI * (i + 0.5) / length);
            double turn = 2 * Math.PI * frequency * i / rate;
            re += fade * x[from + i] * Math.cos(turn);
            im += fade * x[from + i] * Math.sin(turn);
        }
        return re * re + im * im;
    }
}
