package hornwright.bench.material;

/**
 * A figure of a material as a test at the bench gave it.
 *
 * @param u one standard uncertainty, above 0
 * @param how the test, in words
 */
public record Fit(String material, Property property, double value, double u, String how) {
    public Fit {
        if (!Double.isFinite(value) || !(u > 0)) {
            throw new IllegalArgumentException("a fitted value has an uncertainty above 0");
        }
    }

    /** Both together, each by the weight of its uncertainty. */
    Fit and(Fit other) {
        double weight = 1 / (u * u);
        double otherWeight = 1 / (other.u * other.u);
        double sum = weight + otherWeight;
        return new Fit(
                material,
                property,
                (weight * value + otherWeight * other.value) / sum,
                Math.sqrt(1 / sum),
                how + "; " + other.how);
    }
}
