package hornwright.engines.quantity;

/** A volume. SI unit: m³. */
public record Volume(double cubicMetres) implements Quantity<Volume> {
    /** Millilitres (mL). */
    public static Volume ofMillilitres(double millilitres) {
        return new Volume(millilitres * (1e-6));
    }

    /** CubicMillimetres (mm³). */
    public static Volume ofCubicMillimetres(double cubicMillimetres) {
        return new Volume(cubicMillimetres * (1e-9));
    }

    /** The same in mL. */
    public double inMillilitres() {
        return cubicMetres / (1e-6);
    }

    /** The same in mm³. */
    public double inCubicMillimetres() {
        return cubicMetres / (1e-9);
    }

    @Override
    public double si() {
        return cubicMetres;
    }

    @Override
    public Volume withSi(double value) {
        return new Volume(value);
    }
}
