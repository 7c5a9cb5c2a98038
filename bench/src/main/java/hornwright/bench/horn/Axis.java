package hornwright.bench.horn;

/**
 * Where a key turns.
 */
public record Axis(double atMm, double angleDeg, double heightAboveBodyMm, Direction direction) {}
