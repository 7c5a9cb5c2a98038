package hornwright.bench.horn;

/**
 * What the maker stuck the pad in with, and how much.
 */
public record PadAdhesive(String material, double thicknessMm) {}
