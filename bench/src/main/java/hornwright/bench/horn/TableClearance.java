package hornwright.bench.horn;

/**
 * What a contact of the low table has at rest and with its touch down.
 */
public record TableClearance(String link, double atRestMm, double downMm) {}
