package hornwright.bench.archive;

import hornwright.bench.horn.Word;

/** Which side of a claim an item is on. */
public enum Stance implements Word {
    SUPPORTS("supports"),
    CONTRADICTS("contradicts");

    private final String word;

    Stance(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
