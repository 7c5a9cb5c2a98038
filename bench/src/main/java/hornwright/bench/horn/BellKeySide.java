package hornwright.bench.horn;

/**
 * Where the cups of low B and low B flat lie: both left, both right, or one on each side.
 */
public enum BellKeySide implements Word {
    LEFT("left"),
    RIGHT("right"),
    SPLIT("split");

    private final String word;

    BellKeySide(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
