package hornwright.bench.horn;

/**
 * Whether a lever and its cup are one piece or two that meet in a contact.
 */
public enum Pieces implements Word {
    ONE_PIECE("one-piece"),
    TWO_PIECE("two-piece");

    private final String word;

    Pieces(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
