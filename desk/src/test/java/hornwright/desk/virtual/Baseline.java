package hornwright.desk.virtual;

/**
 * The usual way in figures: nominal set sizes and rules of thumb. Frozen before anything was tuned; where each comes from
 * stands in docs/method/virtual-bench.md. Change nothing here to make the plan look better.
 */
final class Baseline {
    /** A gap judged by eye at the dry fit, one standard deviation, mm. */
    static final double EYE_MM = 0.15;

    /** Film a pad is floated on, mm. */
    static final double FILM_LEAST_MM = 0.2;

    static final double FILM_USUAL_MM = 0.5;
    static final double FILM_MOST_MM = 0.8;
    static final double VENT_FILM_LEAST_MM = 0.1;
    static final double VENT_FILM_USUAL_MM = 0.3;

    /** A pad wider than its cup by more does not go in flat; one narrower by more leaves a ring, mm. */
    static final double TOO_WIDE_MM = 0.75;

    static final double TOO_NARROW_MM = 0.75;

    /** Corrections after which a pad comes out again. */
    static final int PATIENCE = 5;

    /** A foot is left so much over its nominal thickness, mm. */
    static final double LEFT_FULL_MM = 0.4;

    /** Rise of the cup for each millimetre at the foot, the rule of thumb, and where the cup meets a guard. */
    static final double FOOT_RATIO = 2.2;

    static final double GUARD_RATIO = 1.0;

    /** A height this near its target is left, mm. */
    static final double HEIGHT_NEAR_MM = 0.3;

    private Baseline() {}
}
