package hornwright.bench.horn;

/**
 * What the finger meets.
 */
public enum TouchKind implements Word {
    PEARL("pearl"),
    ROLLER("roller"),
    SPATULA("spatula"),
    LEVER("lever"),
    THUMB("thumb");

    private final String word;

    TouchKind(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
