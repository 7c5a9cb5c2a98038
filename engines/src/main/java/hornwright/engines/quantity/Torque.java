package hornwright.engines.quantity;

/** A turning moment. SI unit: N·m. */
public record Torque(double newtonMetres) implements Quantity<Torque> {
    /** NewtonMillimetres (N·mm). */
    public static Torque ofNewtonMillimetres(double newtonMillimetres) {
        return new Torque(newtonMillimetres * (1e-3));
    }

    /** The same in N·mm. */
    public double inNewtonMillimetres() {
        return newtonMetres / (1e-3);
    }

    @Override
    public double si() {
        return newtonMetres;
    }

    @Override
    public Torque withSi(double value) {
        return new Torque(value);
    }
}
