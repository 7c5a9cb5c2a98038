package hornwright.engines.quantity;

/** A pressure or an elastic modulus. SI unit: Pa. */
public record Pressure(double pascals) implements Quantity<Pressure> {
    /** Kilopascals (kPa). */
    public static Pressure ofKilopascals(double kilopascals) {
        return new Pressure(kilopascals * (1e3));
    }

    /** Megapascals (MPa). */
    public static Pressure ofMegapascals(double megapascals) {
        return new Pressure(megapascals * (1e6));
    }

    /** The same in kPa. */
    public double inKilopascals() {
        return pascals / (1e3);
    }

    /** The same in MPa. */
    public double inMegapascals() {
        return pascals / (1e6);
    }

    @Override
    public double si() {
        return pascals;
    }

    @Override
    public Pressure withSi(double value) {
        return new Pressure(value);
    }
}
