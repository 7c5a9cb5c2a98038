package hornwright.bench.horn;

/**
 * A spot on the tube: millimetres along the bore from the small end of the neck, degrees round it from the front,
 * positive to the player's right.
 */
public record Position(double atMm, double angleDeg) {}
