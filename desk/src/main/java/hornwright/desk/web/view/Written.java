package hornwright.desk.web.view;

import hornwright.desk.units.Shown;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** How numbers are written: to the digit the uncertainty allows, a true minus sign, no invented precision. */
public final class Written {
    private Written() {}

    /** To the digit its uncertainty allows; a choice (u = 0) in tenths or hundredths. */
    public static String value(double value, double u) {
        return Shown.value(value, u);
    }

    /** What stands behind the ±: twice the standard uncertainty. */
    public static String uncertainty(double u) {
        return u > 0 ? Shown.plusMinus(u) : "";
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

    private static String signed(String text) {
        return text.replace('-', '−');
    }
}
