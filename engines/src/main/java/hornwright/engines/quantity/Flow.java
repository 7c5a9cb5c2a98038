package hornwright.engines.quantity;

/** A volume flow. SI unit: m³/s. */
public record Flow(double cubicMetresPerSecond) implements Quantity<Flow> {
    /** MillilitresPerSecond (mL/s). */
    public static Flow ofMillilitresPerSecond(double millilitresPerSecond) {
        return new Flow(millilitresPerSecond * (1e-6));
    }

    /** The same in mL/s. */
    public double inMillilitresPerSecond() {
        return cubicMetresPerSecond / (1e-6);
    }

    @Override
    public double si() {
        return cubicMetresPerSecond;
    }

    @Override
    public Flow withSi(double value) {
        return new Flow(value);
    }
}
