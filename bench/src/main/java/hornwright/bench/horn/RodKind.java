package hornwright.bench.horn;

/**
 * A long rod through its tubes, or a pair of pivot screws.
 */
public enum RodKind implements Word {
    ROD("rod"),
    PIVOT("pivot");

    private final String word;

    RodKind(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
