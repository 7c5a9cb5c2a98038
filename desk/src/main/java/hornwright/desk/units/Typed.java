package hornwright.desk.units;

import java.math.BigDecimal;

/** What came of reading a typed amount: either it is plain what was meant, or a sentence says what to type instead. */
public sealed interface Typed {
    /** The amount in the unit asked for, exact; {@code in} says the unit it was typed in, as "mm" or "in". */
    record Amount(BigDecimal value, String in) implements Typed {}

    /** Nothing is taken; the sentence says why and shows an example. */
    record Unclear(String sentence) implements Typed {}
}
