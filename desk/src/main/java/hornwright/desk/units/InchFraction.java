package hornwright.desk.units;

import java.util.Optional;

/** A length as the nearest sixty-fourth of an inch, for those who read rules in inches. */
public final class InchFraction {
    private static final double SIXTY_FOURTH_MM = 25.4 / 64;
    /** Further from a sixty-fourth than this, a fraction would mislead and the decimal is shown alone. */
    private static final double NEAR_MM = 0.05;

    private InchFraction() {}

    /** As {@code 1 3/64"}; nothing when no sixty-fourth lies within 0.05 mm, or below zero. */
    public static Optional<String> near(double millimetres) {
        long sixtyFourths = Math.round(millimetres / SIXTY_FOURTH_MM);
        if (!(millimetres >= 0) || Math.abs(millimetres - sixtyFourths * SIXTY_FOURTH_MM) > NEAR_MM) {
            return Optional.empty();
        }
        return Optional.of(text(sixtyFourths));
    }

    private static String text(long sixtyFourths) {
        long whole = sixtyFourths / 64;
        long over = sixtyFourths % 64;
        if (over == 0) {
            return whole + "\"";
        }
        long common = Long.lowestOneBit(over);
        String fraction = (over / common) + "/" + (64 / common) + "\"";
        return whole == 0 ? fraction : whole + " " + fraction;
    }
}
