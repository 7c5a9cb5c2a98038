package hornwright.bench.archive;

import hornwright.bench.horn.Word;

/** How an object was examined. */
public enum Method implements Word {
    SEEN("seen"),
    MEASURED("measured"),
    ANALYSED("analysed with an instrument");

    private final String word;

    Method(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
