package hornwright.bench.horn;

/**
 * The section of a spring: round wire or flat strip.
 */
public sealed interface SpringSection {
    record Needle(double diameterMm) implements SpringSection {}

    record Flat(double widthMm, double thicknessMm) implements SpringSection {}
}
