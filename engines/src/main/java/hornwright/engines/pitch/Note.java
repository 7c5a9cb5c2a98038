package hornwright.engines.pitch;

/**
 * One note.
 *
 * @param startS where it begins, s
 * @param endS where it ends, s
 * @param frequency median of the middle 60 % of its time, Hz
 * @param spreadCents half the range from the 5th to the 95th hundredth of the pitch over that time
 */
public record Note(double startS, double endS, double frequency, double spreadCents) {
    private static final double STEADY = 10;

    public boolean steady() {
        return spreadCents <= STEADY;
    }
}
