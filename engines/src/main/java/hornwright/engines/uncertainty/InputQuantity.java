package hornwright.engines.uncertainty;

/**
 * One independent input.
 *
 * @param value best estimate
 * @param u standard uncertainty: the standard deviation, whatever the shape
 * @param shape how it lies about the estimate
 * @param dof degrees of freedom of u; infinite when u is taken as known
 */
public record InputQuantity(String id, double value, double u, Shape shape, double dof) {
    public InputQuantity {
        if (!Double.isFinite(value) || !(u >= 0) || Double.isInfinite(u) || !(dof >= 1)) {
            throw new IllegalArgumentException(id + " needs a finite value, u of at least 0, dof of at least 1");
        }
        if (shape == Shape.STUDENT && !(dof > 2 && Double.isFinite(dof))) {
            throw new IllegalArgumentException(id + ": Student's shape has a standard deviation only above 2 dof");
        }
    }
}
