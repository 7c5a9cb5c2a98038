package hornwright.bench.archive;

import hornwright.bench.horn.Word;

/** How an item bears on a claim. Negative is "looked, not found" and needs a search log. */
public enum Bearing implements Word {
    DIRECT("direct"),
    INDIRECT("indirect"),
    NEGATIVE("negative");

    private final String word;

    Bearing(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
