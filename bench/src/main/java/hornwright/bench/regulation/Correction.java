package hornwright.bench.regulation;

/**
 * What to do at one contact.
 *
 * @param link id
 * @param errorMm what it is wrong by as it stands, positive too thick
 * @param uMm one standard uncertainty of that
 * @param changeMm what to add (positive) or take (negative); 0 where it is left
 * @param work how
 * @param told whether the readings single out this contact; if not, others of the same touch could be altered instead
 */
public record Correction(String link, double errorMm, double uMm, double changeMm, Work work, boolean told) {
    /** How a contact is put right. */
    public enum Work {
        /** Right as it is, or wrong by less than shows at any cup. */
        LEAVE("leave"),
        /** Sand down. */
        TAKE("take"),
        /** Renew thicker, or line. */
        ADD("add"),
        /** Wrong by less than one pull of the strip takes and yet to be seen at a cup: only a screw is fine enough. */
        SCREW("leave to the screw, where there is one");

        private final String word;

        Work(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /** Error left if the change turns out as meant. */
    public double leftMm() {
        return errorMm + changeMm;
    }
}
