package hornwright.bench.regulation;

import java.util.List;

/**
 * What to do at one contact.
 *
 * @param link id
 * @param errorMm what it is wrong by as it stands, positive too thick
 * @param uMm one standard uncertainty of that
 * @param changeMm what to add (positive) or take (negative); 0 where it is left
 * @param work how
 * @param follows how much the error follows each reading of the plan, mm per mm
 * @param told whether the readings single out this contact; if not, others of the same touch could be altered instead
 */
public record Correction(
        String link, double errorMm, double uMm, double changeMm, Work work, List<Double> follows, boolean told) {
    public Correction {
        follows = List.copyOf(follows);
    }

    private static final double FELT = 0.01;

    /** How a contact is put right. */
    public enum Work {
        /** Right as it is, or wrong by less than shows at any cup. */
        LEAVE("leave"),
        /** Sand down. */
        TAKE("take"),
        /** Renew thicker, or line. */
        ADD("add"),
        /** Left to the screw of this contact, whichever way: finer than the strip, and it can be turned back. */
        SCREW("screw"),
        /** Too thick by less than one pull of the strip takes, yet worth altering, and no screw: a new piece. */
        RENEW("renew");

        private final String word;

        Work(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /** Whether any reading bears on this contact at all. */
    public boolean isFelt() {
        return follows.stream().anyMatch(share -> Math.abs(share) > FELT);
    }

    /** Error left if the change turns out as meant. */
    public double leftMm() {
        return errorMm + changeMm;
    }
}
