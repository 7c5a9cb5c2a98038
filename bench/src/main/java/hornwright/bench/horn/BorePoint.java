package hornwright.bench.horn;

/**
 * The inside diameter of the tube at one spot; straight between spots.
 */
public record BorePoint(double atMm, double diameterMm) {}
