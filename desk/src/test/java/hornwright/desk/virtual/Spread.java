package hornwright.desk.virtual;

/**
 * How horns of one model differ from their pattern and from what is typical, mm unless said: the bands of common practice
 * and bench judgement the shop rules rest on, with shapes and correlations the planner does not assume. One standard
 * deviation each. None of it was measured on a real horn.
 */
final class Spread {
    static final double HOLE = 0.3;
    static final double ARM = 1.0;
    static final double INSIDE = 0.3;

    /** Cup depth: some of it common to the horn, the rest each cup's own. */
    static final double DEPTH_HORN = 0.15;

    static final double DEPTH_CUP = 0.15;

    /** Cup rim to hole rim, bent arms and old work: some common to the horn, the rest each cup's own. */
    static final double GAP_HORN = 0.12;

    static final double GAP_CUP = 0.25;

    static final double SEAT_LEAST = 0.1;
    static final double SEAT_MOST = 0.3;

    /** Squareness left after cups were levelled, across the hole. */
    static final double SIDE_TILT = 0.03;

    /** Waves left on rim (2 and 3 round) and pad face after levelling; a worst gap of at most about 0.05. */
    static final double RIM_TWO = 0.012;

    static final double RIM_THREE = 0.004;
    static final double FACE_TWO = 0.008;

    /** A pad is as thick as said within so much. */
    static final double PAD_THICKNESS = 0.06;

    static final double STIFFNESS_SHARE = 0.25;

    /** Play left at a hinge that passed, across the diameter. */
    static final double PLAY_LEAST = 0.005;

    static final double PLAY_MOST = 0.03;

    static final double FACTORY_HEIGHT = 0.3;
    static final double FOOT = 0.4;
    static final double FOOT_ARM_SHARE = 0.12;

    /** An old pad stands so much prouder or shyer than a new one. */
    static final double OLD_PAD = 0.15;

    /** How far contact points lie below the hinge axis. */
    static final double BELOW_MOST = 5;

    private Spread() {}
}
