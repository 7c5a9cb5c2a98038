package hornwright.bench.plan.missing;

/**
 * How much an answer is worth to the bench (bench judgement): what stops an order or is lost at strip-down first, what only
 * sharpens a number last. A wish is ranked by its worth for each second it takes.
 */
enum Worth {
    /** Nothing can be ordered without it. */
    STOPS_AN_ORDER(10),
    /** Gone for good once the keys are off. */
    LOST_AT_STRIP_DOWN(8),
    /** Turns a class into a window. */
    OPENS_A_WINDOW(6),
    /** Decides what is kept. */
    KEEPS_OR_REPLACES(4),
    /** Decides what is done first. */
    SETS_THE_ORDER(3),
    /** Narrows a number that is there. */
    SHARPENS(1);

    private final double points;

    Worth(double points) {
        this.points = points;
    }

    double perSecond(int seconds) {
        return points / seconds;
    }
}
