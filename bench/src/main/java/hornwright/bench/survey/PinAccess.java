package hornwright.bench.survey;

import hornwright.bench.horn.Word;

/** How one gets at a spot of the body. */
public enum PinAccess implements Word {
    OUTSIDE("from outside"),
    INSIDE("from inside with a rod"),
    UNSOLDER("only with a part unsoldered"),
    NONE("not within reach");

    private final String word;

    PinAccess(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
