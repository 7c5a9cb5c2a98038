package hornwright.bench.survey;

import hornwright.bench.horn.Word;

/** How far the work has come, in the order it is done. */
public enum Stage implements Word {
    ARRIVAL("arrival"),
    STRIPPED("stripped"),
    BODY_STRAIGHT("body straight"),
    SPRINGS_SOUND("springs sound"),
    KEYS_FITTED("keys fitted"),
    HOLES_LEVEL("holes level"),
    CUPS_LEVEL("cups level"),
    TRIAL_FITTED("trial fitted"),
    CORKED("corked"),
    PADDED("padded"),
    HEIGHTS_SET("heights set"),
    REGULATED("regulated"),
    RESTED("rested");

    private final String word;

    Stage(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
