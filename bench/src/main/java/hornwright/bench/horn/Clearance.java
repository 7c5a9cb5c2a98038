package hornwright.bench.horn;

/**
 * The gap wanted at one link in a stated position of the keys.
 */
public record Clearance(String link, double mm) {}
