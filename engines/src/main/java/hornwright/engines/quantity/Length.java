package hornwright.engines.quantity;

/** A length or a thickness. SI unit: m. */
public record Length(double metres) implements Quantity<Length> {
    /** Millimetres (mm). */
    public static Length ofMillimetres(double millimetres) {
        return new Length(millimetres * (1e-3));
    }

    /** Micrometres (µm). */
    public static Length ofMicrometres(double micrometres) {
        return new Length(micrometres * (1e-6));
    }

    /** The same in mm. */
    public double inMillimetres() {
        return metres / (1e-3);
    }

    /** The same in µm. */
    public double inMicrometres() {
        return metres / (1e-6);
    }

    @Override
    public double si() {
        return metres;
    }

    @Override
    public Length withSi(double value) {
        return new Length(value);
    }
}
