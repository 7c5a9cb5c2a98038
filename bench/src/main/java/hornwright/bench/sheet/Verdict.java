package hornwright.bench.sheet;

/** What a sheet says of one thing. */
public enum Verdict {
    UNTRIED("not tried"),
    GOOD("good"),
    MAY_STAY("may stay"),
    ACT("to do"),
    STOP("stop");

    private final String word;

    Verdict(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
