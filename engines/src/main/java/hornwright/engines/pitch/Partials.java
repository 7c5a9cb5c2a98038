package hornwright.engines.pitch;

/**
 * Looks whether a repeating sound has its own fundamental. Two notes together repeat at a common period neither of them
 * sounds: their partials leave gaps there, and the lowest is the first to be missing.
 */
final class Partials {
    private static final int COUNTED = 10;
    /** A fundamental this much weaker than the strongest partial counts as missing (-46 dB); a horn's never is. */
    private static final double MISSING = 0.005;

    private final double rate;
    private final double[] fade;

    Partials(double rate, int span) {
        this.rate = rate;
        fade = new double[span];
        for (int i = 0; i < span; i++) {
            double turn = 2 * Math.PI * (i + 0.5) / span;
            fade[i] = 0.42 - 0.5 * Math.cos(turn) + 0.08 * Math.cos(2 * turn);
        }
    }

    boolean lackFundamental(double[] x, int from, double frequency) {
        double strongest = 0;
        double fundamental = strength(x, from, frequency);
        for (int n = 2; n <= COUNTED && n * frequency < rate / 2; n++) {
            strongest = Math.max(strongest, strength(x, from, n * frequency));
        }
        return fundamental < MISSING * strongest;
    }

    /** Amplitude at one frequency by Goertzel's recursion over the faded window. */
    private double strength(double[] x, int from, double frequency) {
        double turn = 2 * Math.PI * frequency / rate;
        double twice = 2 * Math.cos(turn);
        double before = 0;
        double last = 0;
        for (int i = 0; i < fade.length; i++) {
            double next = x[from + i] * fade[i] + twice * last - before;
            before = last;
            last = next;
        }
        return Math.sqrt(Math.max(0, last * last + before * before - twice * last * before));
    }
}
