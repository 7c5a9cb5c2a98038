package hornwright.engines.quantity;

/** A pure number, such as a lever ratio or a share. SI unit: 1. */
public record Ratio(double share) implements Quantity<Ratio> {
    /** Percent (%). */
    public static Ratio ofPercent(double percent) {
        return new Ratio(percent * (0.01));
    }

    /** The same in %. */
    public double inPercent() {
        return share / (0.01);
    }

    @Override
    public double si() {
        return share;
    }

    @Override
    public Ratio withSi(double value) {
        return new Ratio(value);
    }
}
