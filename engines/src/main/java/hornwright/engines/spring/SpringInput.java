package hornwright.engines.spring;

import org.jspecify.annotations.Nullable;

/**
 * A spring and what bends it.
 *
 * @param section its shape cut across
 * @param modulus Young's modulus, Pa
 * @param length from the root to the bearing point on the cradle, along the spring, m
 * @param bend how far or how hard it is bent
 * @param model which theory
 * @param cradleArm key axis to cradle, m
 * @param padArm key axis to pad centre, m
 * @param strength tensile strength, Pa, if known
 */
public record SpringInput(
        Section section,
        double modulus,
        double length,
        Bend bend,
        Model model,
        double cradleArm,
        double padArm,
        @Nullable Double strength) {
    public SpringInput {
        if (!(modulus > 0) || !(length > 0) || !(cradleArm > 0) || !(padArm > 0)) {
            throw new IllegalArgumentException("modulus, length and arms are above zero");
        }
        if (bend instanceof Bend.To to && !(to.deflection() < length)) {
            throw new IllegalArgumentException("the tip moves by less than the length of the spring");
        }
    }

    /** What the tip is made to do. */
    public sealed interface Bend {
        /** Deflected by this much, m. */
        record To(double deflection) implements Bend {
            public To {
                if (!(deflection >= 0)) {
                    throw new IllegalArgumentException("a deflection is not negative");
                }
            }
        }

        /** Loaded by this force, N. */
        record Under(double force) implements Bend {
            public Under {
                if (!(force >= 0) || Double.isInfinite(force)) {
                    throw new IllegalArgumentException("a force is not negative");
                }
            }
        }
    }

    /** Which theory of bending. */
    public enum Model {
        /** The load keeps its direction while the beam turns under it. */
        LARGE,
        /** Deflection in proportion to load. */
        LINEAR
    }
}
