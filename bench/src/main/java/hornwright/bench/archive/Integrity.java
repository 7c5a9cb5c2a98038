package hornwright.bench.archive;

import hornwright.bench.horn.Word;

/** Whether a horn, or the object a piece of evidence speaks of, is as it was made. */
public enum Integrity implements Word {
    ORIGINAL("original"),
    ALTERED("altered"),
    UNKNOWN("unknown");

    private final String word;

    Integrity(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
