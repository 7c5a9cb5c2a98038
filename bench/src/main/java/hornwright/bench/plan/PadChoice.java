package hornwright.bench.plan;

/**
 * One stocked pad thickness tried in a cup.
 *
 * @param onShelf how many of the right diameter lie there
 * @param left adhesive left to float
 */
public record PadChoice(double thicknessMm, int onShelf, PlannedNumber left, Fit fit) {
    /** What a thickness does in its cup. */
    public enum Fit {
        WORKS("works"),
        TOO_LITTLE_LEFT("too little left to float"),
        TOO_MUCH_LEFT("too much adhesive"),
        NOT_KNOWN("not known well enough");

        private final String word;

        Fit(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }
}
