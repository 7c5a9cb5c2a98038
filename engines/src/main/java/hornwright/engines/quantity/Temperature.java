package hornwright.engines.quantity;

/** A temperature on the absolute scale. SI unit: K. */
public record Temperature(double kelvin) implements Quantity<Temperature> {
    private static final double ICE_POINT_K = 273.15;

    /** Degrees Celsius. */
    public static Temperature ofCelsius(double celsius) {
        return new Temperature(celsius + ICE_POINT_K);
    }

    /** The same in degrees Celsius. */
    public double inCelsius() {
        return kelvin - ICE_POINT_K;
    }

    @Override
    public double si() {
        return kelvin;
    }

    @Override
    public Temperature withSi(double value) {
        return new Temperature(value);
    }
}
