package hornwright.bench.horn;

/**
 * Whether a stop ends the opening or the pressing of a key.
 */
public enum Limits implements Word {
    OPENING("opening"),
    CLOSING("closing");

    private final String word;

    Limits(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
