package hornwright.bench.survey;

import hornwright.bench.horn.Word;

/** What is done with a place, least intrusive first, and whether it can be undone. */
public enum Treatment implements Word {
    KEEP("keep", Reversible.YES),
    CLEAN("clean", Reversible.PARTLY),
    REFIT("refit", Reversible.YES),
    REPLACE_LIKE("replace like for like", Reversible.YES),
    SUBSTITUTE("substitute", Reversible.YES),
    MAKE("make", Reversible.YES),
    DECIDE("look and decide", Reversible.YES);

    /** Whether a treatment can be undone; the old part always goes into a labelled bag. */
    public enum Reversible {
        YES("yes"),
        PARTLY("partly"),
        NO("no");

        private final String word;

        Reversible(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    private final String word;
    private final Reversible reversible;

    Treatment(String word, Reversible reversible) {
        this.word = word;
        this.reversible = reversible;
    }

    @Override
    public String word() {
        return word;
    }

    public Reversible reversible() {
        return reversible;
    }
}
