package hornwright.engines.linkage;

/**
 * How gaps change with the thickness of each link, metre per metre.
 *
 * @param cups [link][cup]
 * @param links [link][link]
 */
public record GapSlopes(double[][] cups, double[][] links) {}
