package hornwright.bench.survey;

/** Whether what is at a place left the factory with the horn. */
public enum Originality {
    ORIGINAL("original"),
    LATER("later repair"),
    MISSING("missing"),
    UNKNOWN("unknown");

    private final String word;

    Originality(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
