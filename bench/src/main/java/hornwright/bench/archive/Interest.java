package hornwright.bench.archive;

import hornwright.bench.horn.Word;

/** What the teller may gain. */
public enum Interest implements Word {
    NEUTRAL("neutral"),
    SELLER("seller"),
    OWNER("owner"),
    ADVERTISING("advertising of the maker");

    private final String word;

    Interest(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
