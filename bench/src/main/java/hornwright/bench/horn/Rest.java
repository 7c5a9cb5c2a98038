package hornwright.bench.horn;

/**
 * Where a spring leaves a key or cup when nobody touches it; also the way a spring pushes.
 */
public enum Rest implements Word {
    OPEN("open"),
    CLOSED("closed");

    private final String word;

    Rest(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
