package hornwright.engines.uncertainty;

/** From low to high, in the unit of the result. */
public record Interval(double low, double high) {}
