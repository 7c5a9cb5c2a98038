package hornwright.bench.survey;

import hornwright.bench.horn.Word;

/** The units a reading may be typed in. */
public enum Unit implements Word {
    MILLIMETRE("mm"),
    NEWTON("N"),
    CENTS("cents"),
    MILLILITRES_PER_SECOND("mL/s"),
    DEGREES_CELSIUS("°C"),
    MINUTE("min");

    private final String symbol;

    Unit(String symbol) {
        this.symbol = symbol;
    }

    public String symbol() {
        return symbol;
    }

    @Override
    public String word() {
        return symbol;
    }
}
