package hornwright.bench.horn;

/**
 * How the rim of a tone hole was made; it decides which work on it is allowed.
 */
public enum RimKind implements Word {
    DRAWN("drawn"),
    ROLLED("rolled"),
    SOLDERED("soldered"),
    PIP("pip");

    private final String word;

    RimKind(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
