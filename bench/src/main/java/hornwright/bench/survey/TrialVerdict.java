package hornwright.bench.survey;

/** Where a trial pad touches first: the back is the hinge side. */
public enum TrialVerdict {
    BACK_FIRST("back first"),
    LEVEL("level"),
    FRONT_FIRST("front first");

    private final String word;

    TrialVerdict(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
