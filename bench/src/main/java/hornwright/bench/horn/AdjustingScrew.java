package hornwright.bench.horn;

/**
 * A screw that sets a contact in place of the sanding strip. Turned in it does what a thicker piece does, turned out what a
 * thinner one does, one to one: it stands where driver and follower meet.
 *
 * @param pitchMm how far one whole turn moves it
 */
public record AdjustingScrew(double pitchMm) {
    /** Coarser than any screw of a key: the coarse thread of a 6 mm screw by ISO 261. */
    static final double COARSEST_MM = 1.0;

    /** Turns that do what adding so much does; below zero out. */
    public double turns(double addMm) {
        return addMm / pitchMm;
    }
}
