package hornwright.bench.horn;

/**
 * One piece of the tube and the stretch of bore it covers.
 */
public record TubePart(HornPart part, double fromMm, double toMm) {}
