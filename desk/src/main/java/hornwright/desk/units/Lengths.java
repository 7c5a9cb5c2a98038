package hornwright.desk.units;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a length into exact millimetres: {@code 4.62}, {@code 4,62 mm}, {@code 3/64}, {@code 1-3/64"}, {@code .047 in},
 * {@code 47 thou}. A fraction is always of an inch; a bare decimal is in the unit the person works in.
 */
public final class Lengths {
    private static final Pattern PARTS = Pattern.compile("([+-]?[\\d.,/' -]*?)\\s*([a-z]+\\.?|\")?");
    private static final Pattern FRACTION =
            Pattern.compile("(-?)(?:(\\d{1,3})(?: |-| - ))?(\\d{1,3}) ?/ ?(2|4|8|16|32|64|128)");
    /** Longer than any horn; what lies beyond was typed wrong. */
    private static final BigDecimal MOST = new BigDecimal(5000);

    private Lengths() {}

    public static Typed read(String raw, LengthUnit usual) {
        String text = Plain.of(raw);
        if (text.isEmpty()) {
            return new Typed.Unclear("Nothing was typed. Write a length like 4.62 or 3/16\".");
        }
        Matcher parts = PARTS.matcher(text);
        if (!parts.matches() || parts.group(1).isBlank()) {
            return notALength(raw);
        }
        String number = parts.group(1).strip();
        String unitWord = parts.group(2);
        Optional<LengthUnit> unit = unitWord == null ? Optional.empty() : LengthUnit.spelt(unitWord);
        if (unitWord != null && unit.isEmpty()) {
            return new Typed.Unclear(
                    "\"%s\" is no unit of length here. Write mm, in or thou, or only the number.".formatted(unitWord));
        }
        return number.contains("/") ? fraction(number, unit) : decimal(number, unit.orElse(usual));
    }

    private static Typed decimal(String number, LengthUnit unit) {
        Optional<BigDecimal> amount = Decimal.read(number);
        if (amount.isPresent()) {
            return within(unit.toMillimetres(amount.get()), unit);
        }
        return Decimal.hasTwoReadings(number)
                ? new Typed.Unclear("\"%s\" could be read two ways. Write it with one point or comma, like 1234.5."
                        .formatted(number))
                : notALength(number);
    }

    private static Typed fraction(String number, Optional<LengthUnit> unit) {
        Matcher shape = FRACTION.matcher(number);
        if (!shape.matches()) {
            return new Typed.Unclear(
                    "\"%s\" is no fraction of an inch. Write it like 3/64, 1 3/64 or 1-3/64.".formatted(number));
        }
        if (unit.isPresent() && unit.get() != LengthUnit.INCH) {
            return new Typed.Unclear("A fraction is of an inch here, but \"%s\" was typed with it. Inch or millimetre?"
                    .formatted(unit.get().symbol()));
        }
        BigDecimal inches = new BigDecimal(shape.group(3)).divide(new BigDecimal(shape.group(4)));
        if (shape.group(2) != null) {
            if (inches.compareTo(BigDecimal.ONE) >= 0) {
                return new Typed.Unclear(
                        "\"%s\" has a fraction of one or more beside whole inches. Which is it?".formatted(number));
            }
            inches = inches.add(new BigDecimal(shape.group(2)));
        }
        BigDecimal signed = shape.group(1).isEmpty() ? inches : inches.negate();
        return within(LengthUnit.INCH.toMillimetres(signed), LengthUnit.INCH);
    }

    private static Typed within(BigDecimal millimetres, LengthUnit unit) {
        return millimetres.abs().compareTo(MOST) > 0
                ? new Typed.Unclear("%s mm is longer than any horn. Is a point or comma missing?"
                        .formatted(millimetres.stripTrailingZeros().toPlainString()))
                : new Typed.Amount(millimetres, unit.symbol());
    }

    private static Typed notALength(String raw) {
        return new Typed.Unclear("\"%s\" is no length. Write it like 4.62, 4,62, 3/16\" or 47 thou."
                .formatted(raw.strip().length() > 40 ? raw.strip().substring(0, 40) + "…" : raw.strip()));
    }
}
