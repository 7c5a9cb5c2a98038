package hornwright.bench.survey;

/** What the owner and the shop agreed the horn is for; it decides how much old material may stay. */
public enum AgreedUse {
    DISPLAY("display"),
    OCCASIONAL("occasional playing"),
    WORKING("working instrument");

    private final String word;

    AgreedUse(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
