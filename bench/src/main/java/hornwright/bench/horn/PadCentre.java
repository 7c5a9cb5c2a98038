package hornwright.bench.horn;

/**
 * What the maker set in the middle of the pad; bare and stitched centres have no thickness.
 */
public record PadCentre(
        PadCentreKind kind, String detail, String material, double diameterMm, double thicknessMm, double massG) {}
