package hornwright.desk.units;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a touch weight into newtons: {@code 0.31}, {@code 0,31 N}, {@code 32 g}. A bare number is newtons. */
public final class Forces {
    private static final Pattern PARTS = Pattern.compile("([+-]?[\\d.,' ]*?)\\s*(n|g|newtons?|grams?|grammes?)?");
    private static final BigDecimal NEWTONS_IN_A_GRAM = new BigDecimal("0.00980665");
    private static final BigDecimal MOST = new BigDecimal(20);

    private Forces() {}

    public static Typed read(String raw) {
        String text = Plain.of(raw);
        Matcher parts = PARTS.matcher(text);
        Optional<BigDecimal> number =
                parts.matches() ? Decimal.read(parts.group(1).strip()) : Optional.empty();
        if (number.isEmpty()) {
            return new Typed.Unclear("\"%s\" is no touch weight. Write it like 0.31 or 32 g.".formatted(text));
        }
        boolean grams = parts.group(2) != null && parts.group(2).startsWith("g");
        BigDecimal newtons = grams ? number.get().multiply(NEWTONS_IN_A_GRAM) : number.get();
        return newtons.abs().compareTo(MOST) > 0
                ? new Typed.Unclear("%s N is more than a finger gives. Grams? Then write 32 g.".formatted(number.get()))
                : new Typed.Amount(newtons, grams ? "g" : "N");
    }
}
