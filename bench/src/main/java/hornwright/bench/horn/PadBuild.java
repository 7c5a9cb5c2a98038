package hornwright.bench.horn;

/**
 * The pad the maker fitted.
 */
public record PadBuild(double diameterMm, double thicknessMm, String material, double massG) {}
