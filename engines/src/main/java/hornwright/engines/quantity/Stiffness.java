package hornwright.engines.quantity;

/** A force per length given way. SI unit: N/m. */
public record Stiffness(double newtonsPerMetre) implements Quantity<Stiffness> {
    /** NewtonsPerMillimetre (N/mm). */
    public static Stiffness ofNewtonsPerMillimetre(double newtonsPerMillimetre) {
        return new Stiffness(newtonsPerMillimetre * (1e3));
    }

    /** The same in N/mm. */
    public double inNewtonsPerMillimetre() {
        return newtonsPerMetre / (1e3);
    }

    @Override
    public double si() {
        return newtonsPerMetre;
    }

    @Override
    public Stiffness withSi(double value) {
        return new Stiffness(value);
    }
}
