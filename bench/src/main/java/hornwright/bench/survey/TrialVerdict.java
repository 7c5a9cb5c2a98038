package hornwright.bench.survey;

import hornwright.bench.horn.Word;

/** Where a trial pad touches first: the back is the hinge side. */
public enum TrialVerdict implements Word {
    BACK_FIRST("back first"),
    LEVEL("level"),
    FRONT_FIRST("front first");

    private final String word;

    TrialVerdict(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
