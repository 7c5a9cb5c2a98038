package hornwright.bench.horn;

/**
 * The four pieces of the tube, from the mouthpiece end.
 */
public enum HornPart implements Word {
    NECK("neck"),
    BODY("body"),
    BOW("bow"),
    BELL("bell");

    private final String word;

    HornPart(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
