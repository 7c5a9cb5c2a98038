package hornwright.desk.web.view;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** How numbers are written: to the digit the uncertainty allows, a true minus sign, no invented precision. */
public final class Written {
    private Written() {}

    /** To the place of the first figure of the uncertainty, at most two decimals; a choice (u = 0) as it is. */
    public static String value(double value, double u) {
        return signed(u > 0 ? rounded(value, decimals(u)) : plain(value));
    }

    public static String uncertainty(double u) {
        return u > 0 ? rounded(u, decimals(u)) : "";
    }

    /** Up to two decimals without trailing zeros. */
    public static String plain(double value) {
        BigDecimal shortest =
                BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP).stripTrailingZeros();
        return signed(shortest.scale() < 0 ? shortest.setScale(0).toPlainString() : shortest.toPlainString());
    }

    /** As it is kept, without trailing zeros. */
    public static String exact(double value) {
        return signed(BigDecimal.valueOf(value).stripTrailingZeros().toPlainString());
    }

    private static int decimals(double u) {
        // 0.95 and more of a place reads as the place above it.
        return (int) Math.clamp(-Math.floor(Math.log10(u / 0.95)), 0, 2);
    }

    private static String rounded(double value, int decimals) {
        return BigDecimal.valueOf(value)
                .setScale(decimals, RoundingMode.HALF_UP)
                .toPlainString();
    }

    private static String signed(String text) {
        return text.replace('-', '−');
    }
}
