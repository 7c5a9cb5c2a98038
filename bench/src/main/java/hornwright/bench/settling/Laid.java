package hornwright.bench.settling;

/**
 * One layer of a contact.
 *
 * @param fresh whether it has still to pack; what has been on the horn for years has done so
 */
public record Laid(String place, String material, double thicknessMm, boolean fresh) {}
