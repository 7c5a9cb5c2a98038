package hornwright.desk.units;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The units a length may be typed in, with the ways people and calipers write them. */
public enum LengthUnit {
    MILLIMETRE("mm", "1", List.of("mm", "millimetre", "millimetres", "millimeter", "millimeters")),
    INCH("in", "25.4", List.of("in", "inch", "inches", "\"", "in.")),
    THOU("thou", "0.0254", List.of("thou", "thous", "thousandth", "thousandths", "mil", "mils"));

    private final String symbol;
    private final BigDecimal inMillimetres;
    private final List<String> spellings;

    LengthUnit(String symbol, String inMillimetres, List<String> spellings) {
        this.symbol = symbol;
        this.inMillimetres = new BigDecimal(inMillimetres);
        this.spellings = spellings;
    }

    public String symbol() {
        return symbol;
    }

    BigDecimal toMillimetres(BigDecimal amount) {
        return amount.multiply(inMillimetres);
    }

    static Optional<LengthUnit> spelt(String word) {
        return Arrays.stream(values())
                .filter(unit -> unit.spellings.contains(word))
                .findFirst();
    }
}
