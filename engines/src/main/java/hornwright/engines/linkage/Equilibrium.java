package hornwright.engines.linkage;

/**
 * Where everything came to rest; each array in the order of the mechanism's lists.
 *
 * @param rotation of the keys at their touches, rad
 * @param cups gaps at the cup centres and forces of the pads
 * @param stops gaps and forces
 * @param links gaps and forces
 */
public record Equilibrium(double[] rotation, Side cups, Side stops, Side links) {

    /** Contacts of one kind: gap in m (negative: pressed in), force in N (0 where nothing touches). */
    public record Side(double[] gap, double[] force) {}
}
