package hornwright.bench.horn;

/**
 * The hinge tube of a key. Flex length is the stretch that twists between touch (or driven arm) and cup; 0 when
 * they stand together.
 */
public record HingeTube(double lengthMm, double outerMm, double innerMm, double flexLengthMm) {
    /** Shear modulus of brass in N/mm²: 37 GPa, common practice. */
    private static final double SHEAR_MODULUS = 37_000;

    /** Twist in radians for each newton millimetre carried along the flex length. */
    public double flexRadPerNmm() {
        double polar = Math.PI / 32 * (Math.pow(outerMm, 4) - Math.pow(innerMm, 4));
        return flexLengthMm / (SHEAR_MODULUS * polar);
    }
}
