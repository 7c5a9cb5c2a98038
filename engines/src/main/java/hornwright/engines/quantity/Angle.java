package hornwright.engines.quantity;

/** A plane angle. SI unit: rad. */
public record Angle(double radians) implements Quantity<Angle> {
    /** Degrees (°). */
    public static Angle ofDegrees(double degrees) {
        return new Angle(degrees * (Math.PI / 180.0));
    }

    /** Milliradians (mrad). */
    public static Angle ofMilliradians(double milliradians) {
        return new Angle(milliradians * (1e-3));
    }

    /** The same in °. */
    public double inDegrees() {
        return radians / (Math.PI / 180.0);
    }

    /** The same in mrad. */
    public double inMilliradians() {
        return radians / (1e-3);
    }

    @Override
    public double si() {
        return radians;
    }

    @Override
    public Angle withSi(double value) {
        return new Angle(value);
    }
}
