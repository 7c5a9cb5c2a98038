package hornwright.desk.units;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/**
 * Numbers as people read them: no digit finer than what is known. The ± shown is twice the standard uncertainty, which
 * holds the truth about 95 times in 100.
 */
public final class Shown {
    /** Said once wherever a ± stands. */
    public static final String PLUS_MINUS = "± holds the truth about 95 times in 100";

    private static final String MINUS = "−";

    private Shown() {}

    /** "9.8 ± 0.4"; without the ± when u is 0; "up to 0.07" where the ± is larger than the value. */
    public static String of(double value, double u) {
        return isChoice(u) ? value(value, u) : unsure(value, u, false).orElse(value(value, u) + " ± " + plusMinus(u));
    }

    /** The same of a quantity that may be below zero: "−0.01 to 0.07" where its sign is not known. */
    public static String signed(double value, double u) {
        return unsure(value, u, true).orElseGet(() -> of(value, u));
    }

    /**
     * What is said in place of a value whose ± is larger than itself: as far as it may reach. Empty where value and ± say
     * enough.
     *
     * @param mayBeNegative whether it can lie below zero at all
     */
    public static Optional<String> unsure(double value, double u, boolean mayBeNegative) {
        double twice = 2 * u;
        if (isChoice(u) || Math.abs(value) >= twice) {
            return Optional.empty();
        }
        int decimals = decimals(twice);
        String most = fixed(value + twice, decimals);
        return Optional.of(
                mayBeNegative || value < 0 ? fixed(value - twice, decimals) + " to " + most : "up to " + most);
    }

    /** The value alone, with as many digits as its uncertainty leaves it. */
    public static String value(double value, double u) {
        return fixed(value, isChoice(u) ? plainDecimals(value) : decimals(2 * u));
    }

    /** Twice the standard uncertainty, to one digit that counts; empty for a choice. */
    public static String plusMinus(double u) {
        double twice = 2 * u;
        return isChoice(u) ? "" : fixed(twice, decimals(twice));
    }

    /** Nobody at a bench can tell half a thousandth from nothing. */
    private static boolean isChoice(double u) {
        return 2 * u < 0.0005;
    }

    /** "4.3 to 4.7", in tenths; the window is made smaller by rounding, never larger. */
    public static String window(double low, double high) {
        double from = Math.ceil(low * 10 - 1e-6) / 10;
        double to = Math.floor(high * 10 + 1e-6) / 10;
        if (from > to) {
            return fixed((low + high) / 2, 2);
        }
        return from == to ? fixed(from, 1) : fixed(from, 1) + " to " + fixed(to, 1);
    }

    /** With exactly so many decimals, a point, and a true minus sign; never "−0". */
    public static String fixed(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN);
        String plain = rounded.abs().toPlainString();
        return rounded.signum() < 0 ? MINUS + plain : plain;
    }

    private static int decimals(double plusMinus) {
        if (plusMinus >= 9.5) {
            return 0;
        }
        if (plusMinus >= 0.095) {
            return 1;
        }
        return plusMinus >= 0.0095 ? 2 : 3;
    }

    private static int plainDecimals(double value) {
        return Math.abs(value * 10 - Math.rint(value * 10)) < 1e-9 ? 1 : 2;
    }
}
