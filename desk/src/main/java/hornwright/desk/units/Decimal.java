package hornwright.desk.units;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A decimal number with a point or a comma: one mark at most, so "1.234" and "1,234" both mean one and a bit. A text
 * with both, or with either twice, has two readings and is not a number here.
 */
final class Decimal {
    private static final Pattern SHAPE = Pattern.compile("([+-]?)(\\d{1,7}(?:[.,]\\d{0,9})?|[.,]\\d{1,9})");
    private static final Pattern TWO_READINGS = Pattern.compile("[+-]?[\\d.,' ]*\\d[.,' ][\\d.,' ]*[.,][\\d.,' ]*");

    private Decimal() {}

    static Optional<BigDecimal> read(String text) {
        if (!SHAPE.matcher(text).matches()) {
            return Optional.empty();
        }
        String number = text.replace(',', '.').replace("+", "");
        return Optional.of(new BigDecimal(number.endsWith(".") ? number + "0" : number));
    }

    /** Whether it looks like a number with grouped thousands, or with two decimal marks. */
    static boolean hasTwoReadings(String text) {
        return TWO_READINGS.matcher(text).matches();
    }
}
