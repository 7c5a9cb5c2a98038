package hornwright.bench.survey;

import hornwright.bench.horn.Word;

/** The state of a piece of material, in the bench's words, and what it allows. */
public enum Condition implements Word {
    SOUND("sound", Fit.GOOD),
    STAINED("stained", Fit.GOOD),
    TARNISHED("tarnished", Fit.GOOD),
    WORN("worn", Fit.GOOD),
    RESOLDERED("resoldered", Fit.GOOD),
    PACKED("packed", Fit.DOUBTFUL),
    SOFT("soft", Fit.DOUBTFUL),
    DRY("dry", Fit.DOUBTFUL),
    TIRED("tired", Fit.DOUBTFUL),
    RUST_SPOTS("rust spots", Fit.DOUBTFUL),
    WORN_AT_THE_SEAT("worn at the seat", Fit.DOUBTFUL),
    WORN_THROUGH("worn through in places", Fit.DOUBTFUL),
    LIFTED("lifted on one side", Fit.DOUBTFUL),
    HARD("hard", Fit.SPENT),
    BRITTLE("brittle", Fit.SPENT),
    MOTH_EATEN("moth-eaten", Fit.SPENT),
    TORN("torn", Fit.SPENT),
    CRACKED("cracked", Fit.SPENT),
    BROKEN("broken", Fit.SPENT),
    MISSING("missing", Fit.SPENT),
    UNKNOWN("unknown", Fit.DOUBTFUL);

    /** Whether a piece in this state can go on working. */
    public enum Fit {
        GOOD,
        DOUBTFUL,
        SPENT
    }

    private final String word;
    private final Fit fit;

    Condition(String word, Fit fit) {
        this.word = word;
        this.fit = fit;
    }

    @Override
    public String word() {
        return word;
    }

    public Fit fit() {
        return fit;
    }
}
