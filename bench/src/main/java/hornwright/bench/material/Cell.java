package hornwright.bench.material;

/**
 * One figure of one material.
 *
 * @param material as asked for; the figure of "unknown" stands in for a material nobody has listed
 * @param u one standard uncertainty
 * @param because where it comes from, in a sentence
 */
public record Cell(String material, Property property, double value, double u, Standing standing, String because) {}
