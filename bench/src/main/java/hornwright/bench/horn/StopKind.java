package hornwright.bench.horn;

/**
 * What a key comes to rest against.
 */
public enum StopKind implements Word {
    FOOT("foot"),
    GUARD("guard"),
    BUMPER("bumper");

    private final String word;

    StopKind(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
