package hornwright.desk.web.view;

import java.util.Optional;

/** Notices a slip of the unit and a value far from the pattern. It never changes a value, it only asks. */
public final class Likely {
    private static final double INCH = 25.4;
    /** The factor of a mistaken unit is met to within so much (bench judgement). */
    private static final double NEAR = 0.06;
    /** Further from the pattern than this share, a value is remarked on (bench judgement). */
    private static final double FAR = 0.25;

    private Likely() {}

    /**
     * A question when a bare number is about 25.4 times what is expected, or a 25.4th of it; empty otherwise. With the
     * unit typed there is nothing to ask.
     */
    public static Optional<String> question(String typed, double millimetres, Optional<Double> expected) {
        if (expected.isEmpty() || typed.matches("(?s).*[a-zA-Z\"/″].*") || millimetres <= 0) {
            return Optional.empty();
        }
        double ratio = millimetres / expected.get();
        if (near(ratio, INCH)) {
            return Optional.of("%s is about 25.4 times what we expect here. Inch or millimetre? Type the unit with it."
                    .formatted(typed.strip()));
        }
        return near(ratio, 1 / INCH)
                ? Optional.of("%s is about a 25th of what we expect here. Inch or millimetre? Type the unit with it."
                        .formatted(typed.strip()))
                : Optional.empty();
    }

    public static String remark(double value, String unit, String typed, Optional<Double> expected) {
        String converted =
                typed.matches("(?s).*[a-zA-Z\"/″].*") && !typed.strip().endsWith(unit)
                        ? "= %s %s".formatted(Written.plain(value), unit)
                        : "";
        if (expected.isEmpty() || Math.abs(value / expected.get() - 1) <= FAR) {
            return converted;
        }
        return (converted + " The pattern has about %s. Measure once more?".formatted(Written.plain(expected.get())))
                .strip();
    }

    private static boolean near(double ratio, double wanted) {
        return Math.abs(ratio / wanted - 1) <= NEAR;
    }
}
