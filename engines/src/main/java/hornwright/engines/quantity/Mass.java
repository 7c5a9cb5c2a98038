package hornwright.engines.quantity;

/** A mass. SI unit: kg. */
public record Mass(double kilograms) implements Quantity<Mass> {
    /** Grams (g). */
    public static Mass ofGrams(double grams) {
        return new Mass(grams * (1e-3));
    }

    /** The same in g. */
    public double inGrams() {
        return kilograms / (1e-3);
    }

    @Override
    public double si() {
        return kilograms;
    }

    @Override
    public Mass withSi(double value) {
        return new Mass(value);
    }
}
