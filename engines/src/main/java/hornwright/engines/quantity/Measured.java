package hornwright.engines.quantity;

import java.util.function.Function;

/**
 * A value with what is known about it.
 *
 * @param value best estimate
 * @param uncertainty one standard uncertainty, never negative
 * @param degreesOfFreedom of that uncertainty; infinite when it is taken as known
 * @param source where the value comes from; followed down to its leaves it is the number's <em>because</em>
 */
public record Measured<Q extends Quantity<Q>>(Q value, Q uncertainty, double degreesOfFreedom, Source source) {
    public Measured {
        if (!Double.isFinite(value.si()) || !(uncertainty.si() >= 0) || Double.isInfinite(uncertainty.si())) {
            throw new IllegalArgumentException(
                    "a measured value needs a finite value and uncertainty, got " + value + " ± " + uncertainty);
        }
        if (!(degreesOfFreedom > 0)) {
            throw new IllegalArgumentException("degrees of freedom must be positive, got " + degreesOfFreedom);
        }
    }

    /** A value whose uncertainty is taken as known. */
    public static <Q extends Quantity<Q>> Measured<Q> of(Q value, Q uncertainty, Source source) {
        return new Measured<>(value, uncertainty, Double.POSITIVE_INFINITY, source);
    }

    /** A value agreed on rather than measured: no uncertainty of its own. */
    public static <Q extends Quantity<Q>> Measured<Q> exact(Q value, Source source) {
        return of(value, value.withSi(0), source);
    }

    public double si() {
        return value.si();
    }

    /** Standard uncertainty in the SI unit. */
    public double u() {
        return uncertainty.si();
    }

    /** The same number standing on another source. */
    public Measured<Q> because(Function<Source, Source> why) {
        return new Measured<>(value, uncertainty, degreesOfFreedom, why.apply(source));
    }
}
