package hornwright.bench.survey;

import hornwright.bench.horn.Word;

/** What is done with a place, least intrusive first, and whether it can be undone. */
public enum Treatment implements Word {
    KEEP("keep", "keep", Reversible.YES),
    CLEAN("clean", "clean", Reversible.PARTLY),
    REFIT("refit", "refit", Reversible.YES),
    REPLACE_LIKE("replace like for like", "replace with what the factory fitted", Reversible.YES),
    SUBSTITUTE("substitute", "replace with another material", Reversible.YES),
    MAKE("make", "make new", Reversible.YES),
    DECIDE("look and decide", "look and decide", Reversible.YES);

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
    private final String spoken;
    private final Reversible reversible;

    Treatment(String word, String spoken, Reversible reversible) {
        this.word = word;
        this.spoken = spoken;
        this.reversible = reversible;
    }

    @Override
    public String word() {
        return word;
    }

    /** As a person reads it; "like for like" alone could be taken for like what is there now. */
    public String spoken() {
        return spoken;
    }

    public Reversible reversible() {
        return reversible;
    }
}
