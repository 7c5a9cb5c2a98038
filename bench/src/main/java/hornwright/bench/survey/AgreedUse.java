package hornwright.bench.survey;

import hornwright.bench.horn.Word;

/** What the owner and the shop agreed the horn is for; it decides how much old material may stay. */
public enum AgreedUse implements Word {
    DISPLAY("display"),
    OCCASIONAL("occasional playing"),
    WORKING("working instrument");

    private final String word;

    AgreedUse(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
