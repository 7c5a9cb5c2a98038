package hornwright.bench.survey;

import hornwright.bench.horn.Word;

/** Whether what is at a place left the factory with the horn. */
public enum Originality implements Word {
    ORIGINAL("original"),
    LATER("later repair"),
    MISSING("missing"),
    UNKNOWN("unknown");

    private final String word;

    Originality(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
