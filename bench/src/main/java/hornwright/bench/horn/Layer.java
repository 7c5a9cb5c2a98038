package hornwright.bench.horn;

/**
 * One piece of material in a contact. A contact may carry several, on either part and on either side of it.
 */
public record Layer(String place, String material, double thicknessMm, Face face, Side side, Form form, Cut cut) {}
