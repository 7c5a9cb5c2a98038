package hornwright.desk.virtual;

/**
 * Exact rotation about a hinge: no small angles. A point at {@code arm} from the axis along the tube and {@code below}
 * it, in mm, lifts by arm sin q + below (1 - cos q).
 */
record Turning(double arm, double below) {
    double lift(double q) {
        return arm * Math.sin(q) + below * (1 - Math.cos(q));
    }

    /** The rotation at which the point stands so high. */
    double rotation(double lift) {
        double q = lift / arm;
        for (int i = 0; i < 20; i++) {
            q -= (lift(q) - lift) / (arm * Math.cos(q) + below * Math.sin(q));
        }
        return q;
    }
}
