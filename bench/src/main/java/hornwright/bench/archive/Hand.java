package hornwright.bench.archive;

import hornwright.bench.horn.Word;

/** How near the teller stood to what is told. */
public enum Hand implements Word {
    FIRST("first hand"),
    SECOND("second hand"),
    UNKNOWN("unknown hand");

    private final String word;

    Hand(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
