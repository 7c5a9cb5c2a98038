package hornwright.bench.horn;

/**
 * A link that works through a third key only in one state of a fourth: the octave thumb acts on a vent through the
 * switch, which G sets. In the other state the contact hangs free with the idle clearance.
 */
public record Coupling(
        String through, String whenKey, Rest whenState, double idleClearanceMm, double idleDriverArmMm) {}
