package hornwright.desk.virtual;

/**
 * A skilled hand in figures, the same in every way of working (bench judgement, mm, one standard deviation where nothing
 * else is said). Settled before ways were compared.
 *
 * @param laysFilm film laid on differs from what was meant by so much
 * @param uneven and from edge to edge by so much
 * @param settles warm and let down, a pad settles on the rim by this share of what it stands askew
 * @param corrects one correction takes out this share of what the light shows
 * @param spread of both shares
 * @param edge error of a correction at the rim
 * @param eye a gap judged at the dry fit
 */
record Hand(double laysFilm, double uneven, double settles, double corrects, double spread, double edge, double eye) {
    /** The lightest closing a pad must seal at, at its centre, N: half a newton is the weight of a light finger. */
    static final double LIGHT_N = 0.5;

    /** A gap that counts as closed under a feeler: the shop rule regulation.closed_mm. */
    static final double CLOSED_MM = 0.02;

    /** Film at the thinnest edge that can still be pushed, and at the thickest that still holds. */
    static final double THINNEST_MM = 0.05;

    static final double THICKEST_MM = 1.1;

    static final double PAD_MIN = 6;
    static final double CORRECTION_MIN = 2.5;
    static final double OTHER_PAD_MIN = 3;
    static final double REWORK_MIN = 12;
    static final double SANDING_MIN = 1.5;
    static final double FOOT_AGAIN_MIN = 6;

    /** A piece is cut to what was meant within so much. */
    static final double CUT_MM = 0.05;

    /** Of what is to be sanded off this part is taken at a time, within a share of it: what is off stays off. */
    static final double SANDS_PART = 2.0 / 3;

    static final double SANDS_SHARE = 0.1;

    static Hand skilled() {
        return new Hand(0.08, 0.05, 0.6, 0.8, 0.15, 0.012, Baseline.EYE_MM);
    }

    Hand layingFilm(double mm) {
        return new Hand(mm, uneven, settles, corrects, spread, edge, eye);
    }

    Hand layingEvenly() {
        return new Hand(laysFilm, 0, settles, corrects, spread, edge, eye);
    }

    /** What is seen at the edge, and moved there, is true to so much. */
    Hand withEdge(double mm) {
        return new Hand(laysFilm, uneven, settles, corrects, spread, mm, eye);
    }
}
