package hornwright.bench.horn;

/**
 * Whether the material lies on the side that looks at the tube or on the side that looks away from it.
 */
public enum Side implements Word {
    INNER("inner"),
    OUTER("outer");

    private final String word;

    Side(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
