package hornwright.bench.horn;

/**
 * How the piece was cut from its sheet; telling for who made it.
 */
public enum Cut implements Word {
    KNIFED("knifed"),
    PUNCHED("punched"),
    BEVELLED("bevelled"),
    SANDED("sanded"),
    DRAWN_ON("drawn-on");

    private final String word;

    Cut(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
