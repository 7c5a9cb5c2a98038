package hornwright.bench.sound;

/** Whether a change of height makes a note worse that ends outside the shop's band. */
public enum Harm {
    NONE(""),
    /** In the band before, outside it with everything done. */
    PUSHED_OUT("goes out of the band"),
    /** Outside before and further outside with everything done. */
    FURTHER_OUT("goes further out"),
    /** Only when this change is made and the others are not. */
    ALONE("worse unless all are done");

    /** Less than this is not heard and not told, cents. */
    private static final double HEARD = 0.5;

    private final String words;

    Harm(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /**
     * Judges one note.
     *
     * @param band the shop's, cents
     * @param before cents with nothing changed
     * @param alone cents with this change alone
     * @param after cents with all changes
     */
    static Harm of(double band, double before, double alone, double after) {
        boolean outwards = Math.abs(alone) > Math.abs(before);
        if (outwards && Math.abs(after) > band) {
            if (Math.abs(before) <= band) {
                return PUSHED_OUT;
            }
            if (Math.abs(after) > Math.abs(before) + HEARD) {
                return FURTHER_OUT;
            }
        }
        boolean worse = Math.abs(before) <= band || Math.abs(alone) > Math.abs(before) + HEARD;
        return outwards && Math.abs(alone) > band && worse ? ALONE : NONE;
    }
}
