package hornwright.engines.quantity;

/** A span of time. SI unit: s. */
public record Time(double seconds) implements Quantity<Time> {
    /** Milliseconds (ms). */
    public static Time ofMilliseconds(double milliseconds) {
        return new Time(milliseconds * (1e-3));
    }

    /** Hours (h). */
    public static Time ofHours(double hours) {
        return new Time(hours * (3600.0));
    }

    /** The same in ms. */
    public double inMilliseconds() {
        return seconds / (1e-3);
    }

    /** The same in h. */
    public double inHours() {
        return seconds / (3600.0);
    }

    @Override
    public double si() {
        return seconds;
    }

    @Override
    public Time withSi(double value) {
        return new Time(value);
    }
}
