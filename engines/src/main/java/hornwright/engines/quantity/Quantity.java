package hornwright.engines.quantity;

/**
 * A value of one dimension, held as one double in the SI unit, so that a length can never be passed where a force is
 * meant. Arithmetic stays inside the dimension; formulas that mix dimensions work on plain doubles inside an engine.
 */
public sealed interface Quantity<Q extends Quantity<Q>> extends Comparable<Q>
        permits Angle,
                Area,
                Flow,
                Force,
                Frequency,
                Length,
                Mass,
                Pressure,
                Ratio,
                Stiffness,
                Temperature,
                Time,
                Torque,
                Volume {
    /** The value in the SI unit of the dimension. */
    double si();

    /** The same dimension with another value in its SI unit. */
    Q withSi(double value);

    default Q plus(Q other) {
        return withSi(si() + other.si());
    }

    default Q minus(Q other) {
        return withSi(si() - other.si());
    }

    default Q times(double factor) {
        return withSi(si() * factor);
    }

    default Q negated() {
        return withSi(-si());
    }

    default Q magnitude() {
        return withSi(Math.abs(si()));
    }

    /** This over another of the same dimension. */
    default double over(Q other) {
        return si() / other.si();
    }

    @Override
    default int compareTo(Q other) {
        return Double.compare(si(), other.si());
    }
}
