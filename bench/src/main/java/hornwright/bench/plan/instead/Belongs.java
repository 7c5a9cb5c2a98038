package hornwright.bench.plan.instead;

/** How well a material belongs on such a horn; best first. */
public enum Belongs {
    BUILT("as built"),
    SEEN("seen at this place of such horns"),
    OF_THE_TRADE("the trade has always used it"),
    LATER("later repairers commonly use it");

    private final String word;

    Belongs(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
