package hornwright.desk.virtual;

import java.util.Random;

/** Chance for one purpose on one horn: the same seed and purpose always draw the same, whichever way the horn is done. */
final class Draw {
    private final Random random;

    private Draw(long seed) {
        this.random = new Random(seed);
    }

    static Draw of(long seed, String purpose) {
        return new Draw(seed * 0x9E3779B97F4A7C15L + purpose.hashCode() * 0xD1342543DE82EF95L);
    }

    double normal(double sd) {
        return sd * random.nextGaussian();
    }

    double within(double from, double to) {
        return from + (to - from) * random.nextDouble();
    }

    int index(int size) {
        return random.nextInt(size);
    }

    /** To the nearest step, as a scale is read. */
    static double read(double value, double step) {
        return Math.round(value / step) * step;
    }
}
