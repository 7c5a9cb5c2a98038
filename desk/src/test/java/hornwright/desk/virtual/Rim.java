package hornwright.desk.virtual;

/**
 * The waves between a rim and a pad's face, sampled round the hole, mm; and whether a pad on it shuts. A quick second way to
 * what the seat engine reckons; a test holds the two together.
 */
record Rim(double[] waves) {
    private static final int SPOTS = 72;
    private static final double[] COS = new double[SPOTS];
    private static final double[] SIN = new double[SPOTS];

    static {
        for (int i = 0; i < SPOTS; i++) {
            COS[i] = Math.cos(2 * Math.PI * i / SPOTS);
            SIN[i] = Math.sin(2 * Math.PI * i / SPOTS);
        }
    }

    /** One wave: so many round, so high, turned so far. */
    record Wave(int round, double height, double turned) {}

    static Rim of(Wave... waves) {
        double[] sum = new double[SPOTS];
        for (int i = 0; i < SPOTS; i++) {
            double angle = 2 * Math.PI * i / SPOTS;
            for (Wave wave : waves) {
                sum[i] += wave.height() * Math.cos(wave.round() * (angle - wave.turned()));
            }
        }
        return new Rim(sum);
    }

    /**
     * A pad with its hinge, mm and rad.
     *
     * @param proud at its centre
     * @param stiffness for each millimetre of rim, N/mm²
     */
    record Pad(double radius, double arm, double proud, double front, double side, double stiffness) {}

    /** Torque, N mm, at which no gap is larger than this. */
    double torqueToShut(Pad pad, double gap) {
        double turn = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < SPOTS; i++) {
            turn = Math.max(turn, (-gap - height(pad, i)) / lever(pad, i));
        }
        double torque = 0;
        for (int i = 0; i < SPOTS; i++) {
            torque += Math.max(0, lever(pad, i) * turn + height(pad, i)) * lever(pad, i);
        }
        return torque * pad.stiffness() * pad.radius() * 2 * Math.PI / SPOTS;
    }

    /** Gaps at the front and at the back when a hard stack just touches somewhere. */
    double[] gapsAtFirstTouch(Pad pad) {
        double turn = Double.POSITIVE_INFINITY;
        for (int i = 0; i < SPOTS; i++) {
            turn = Math.min(turn, -height(pad, i) / lever(pad, i));
        }
        return new double[] {gap(pad, 0, turn), gap(pad, SPOTS / 2, turn)};
    }

    private double gap(Pad pad, int i, double turn) {
        return -(lever(pad, i) * turn + height(pad, i));
    }

    private double height(Pad pad, int i) {
        return pad.proud() + pad.radius() * (pad.front() * COS[i] + pad.side() * SIN[i]) + waves[i];
    }

    private static double lever(Pad pad, int i) {
        return pad.arm() + pad.radius() * COS[i];
    }
}
