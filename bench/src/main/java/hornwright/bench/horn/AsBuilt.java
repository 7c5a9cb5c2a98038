package hornwright.bench.horn;

/**
 * How the maker finished one place: material, colour, thickness and finish. Thickness 0 where none applies.
 */
public record AsBuilt(String material, String colour, double thicknessMm, String finish) {}
