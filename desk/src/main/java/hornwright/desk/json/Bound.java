package hornwright.desk.json;

import java.util.function.DoublePredicate;

/** What values a number may take. */
public enum Bound {
    ANY("a number", v -> true),
    NOT_NEGATIVE("zero or more", v -> v >= 0),
    POSITIVE("more than zero", v -> v > 0),
    SHARE("between 0 and 1", v -> v >= 0 && v <= 1),
    INSIDE_SHARE("above 0 and below 1", v -> v > 0 && v < 1),
    COUNT("a whole number, 1 or more", v -> v >= 1 && v == Math.rint(v)),
    WHOLE("a whole number", v -> v == Math.rint(v));

    private final String words;
    private final DoublePredicate holds;

    Bound(String words, DoublePredicate holds) {
        this.words = words;
        this.holds = holds;
    }

    String words() {
        return words;
    }

    boolean allows(double value) {
        return Double.isFinite(value) && holds.test(value);
    }
}
