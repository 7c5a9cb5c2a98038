package hornwright.bench.horn;

/**
 * Whether a touch acts alone or is tied to the keys beside it.
 */
public enum Articulation implements Word {
    PLAIN("plain"),
    ARTICULATED("articulated");

    private final String word;

    Articulation(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
