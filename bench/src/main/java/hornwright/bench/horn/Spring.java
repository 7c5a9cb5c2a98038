package hornwright.bench.horn;

/**
 * The spring of a key, with torque and rate as seen at the hinge with the key closed.
 */
public record Spring(
        String place,
        String material,
        SpringSection section,
        double lengthMm,
        double cradleArmMm,
        double modulusGPa,
        double torqueNmm,
        double rateNmmPerRad,
        Rest towards) {
    /** Wire diameter or strip thickness, the size a drawer of springs is sorted by. */
    public double thicknessMm() {
        return switch (section) {
            case SpringSection.Needle needle -> needle.diameterMm();
            case SpringSection.Flat flat -> flat.thicknessMm();
        };
    }
}
