package hornwright.engines.quantity;

/** A frequency. SI unit: Hz. */
public record Frequency(double hertz) implements Quantity<Frequency> {
    @Override
    public double si() {
        return hertz;
    }

    @Override
    public Frequency withSi(double value) {
        return new Frequency(value);
    }
}
