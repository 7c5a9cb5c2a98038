package hornwright.bench.survey;

/** The units a reading may be typed in. */
public enum Unit {
    MILLIMETRE("mm"),
    NEWTON("N"),
    CENTS("cents"),
    MILLILITRES_PER_SECOND("mL/s"),
    DEGREES_CELSIUS("°C");

    private final String symbol;

    Unit(String symbol) {
        this.symbol = symbol;
    }

    public String symbol() {
        return symbol;
    }
}
