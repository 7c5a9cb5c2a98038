package hornwright.bench.horn;

import java.util.Locale;

/** Millimetres in a sentence. */
final class Numbers {
    private Numbers() {}

    static String mm(double value) {
        return String.format(Locale.ROOT, "%.2f", value);
    }

    static String rad(double value) {
        return String.format(Locale.ROOT, "%.3f", value);
    }
}
