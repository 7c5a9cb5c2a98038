package hornwright.engines.pitch;

/**
 * Looks whether a repeating sound has its own fundamental. Two notes together repeat at a common period neither of them
 * sounds: their partials leave gaps there, the fundamental first among them. A horn alone may have a faint fundamental or a
 * gap here and there, but not both (rendered saxophones: fundamentals down to -30 dB, then without a gap).
 */
final class Partials {
    private static final int COUNTED = 12;
    /** A fundamental this much weaker than the strongest partial counts as missing (-46 dB); a horn's never is. */
    private static final double MISSING = 0.005;

    /** One this much weaker (-30 dB) is faint, and counts as missing when partials are. */
    private static final double FAINT = 0.032;

    /** A partial this much weaker (-33 dB) is a gap; so many among the counted ones are the gaps of two voices. */
    private static final double GAP = 0.022;

    private static final int GAPS = 3;

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
        double fundamental = strength(x, from, frequency);
        double strongest = 0;
        double[] partials = new double[COUNTED + 1];
        int counted = 1;
        for (int n = 2; n <= COUNTED && n * frequency < rate / 2; n++) {
            partials[n] = strength(x, from, n * frequency);
            strongest = Math.max(strongest, partials[n]);
            counted = n;
        }
        if (fundamental < MISSING * strongest) {
            return true;
        }
        int gaps = 0;
        for (int n = 2; n <= counted; n++) {
            gaps += partials[n] < GAP * strongest ? 1 : 0;
        }
        return fundamental < FAINT * strongest && gaps >= GAPS;
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
