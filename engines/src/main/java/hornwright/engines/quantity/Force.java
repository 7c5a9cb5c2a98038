package hornwright.engines.quantity;

/** A force. SI unit: N. */
public record Force(double newtons) implements Quantity<Force> {
    /** GramsForce (gf). */
    public static Force ofGramsForce(double gramsForce) {
        return new Force(gramsForce * (9.80665e-3));
    }

    /** The same in gf. */
    public double inGramsForce() {
        return newtons / (9.80665e-3);
    }

    @Override
    public double si() {
        return newtons;
    }

    @Override
    public Force withSi(double value) {
        return new Force(value);
    }
}
