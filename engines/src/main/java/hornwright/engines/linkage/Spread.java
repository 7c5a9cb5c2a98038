package hornwright.engines.linkage;

/**
 * How far a first assembly strays: standard deviations of independent normal errors.
 *
 * @param thickness of link and stop materials, m
 * @param arm of cups and links, m
 * @param offset of cups, m
 * @param draws how many assemblies are drawn
 * @param seed the same seed draws the same assemblies
 * @param closed a gap up to this counts as closed, m
 */
public record Spread(double thickness, double arm, double offset, int draws, long seed, double closed) {
    public Spread {
        if (!(thickness >= 0 && arm >= 0 && offset >= 0 && closed >= 0 && draws > 0)) {
            throw new IllegalArgumentException("deviations are not negative, draws at least one");
        }
    }
}
