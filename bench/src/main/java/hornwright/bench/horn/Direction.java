package hornwright.bench.horn;

/**
 * Whether a hinge runs along the tube or across it.
 */
public enum Direction implements Word {
    ALONG("along"),
    ACROSS("across");

    private final String word;

    Direction(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
