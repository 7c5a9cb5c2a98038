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
        Rest towards) {}
