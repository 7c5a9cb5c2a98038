package hornwright.engines.uncertainty;

/** A value with its exact derivative by every input. A slope of zero hides even an infinite one behind it. */
record Dual(double value, double[] slopes) {

    static Dual constant(double value, int inputs) {
        return new Dual(value, new double[inputs]);
    }

    static Dual variable(double value, int index, int inputs) {
        double[] slopes = new double[inputs];
        slopes[index] = 1;
        return new Dual(value, slopes);
    }

    /** A function of this with that value and slope. */
    Dual through(double result, double slope) {
        double[] all = new double[slopes.length];
        for (int i = 0; i < all.length; i++) {
            all[i] = times(slope, slopes[i]);
        }
        return new Dual(result, all);
    }

    /** A function of this and another. */
    Dual with(Dual other, double result, double slopeHere, double slopeThere) {
        double[] all = new double[slopes.length];
        for (int i = 0; i < all.length; i++) {
            all[i] = times(slopeHere, slopes[i]) + times(slopeThere, other.slopes[i]);
        }
        return new Dual(result, all);
    }

    private static double times(double slope, double inner) {
        return inner == 0 ? 0 : slope * inner;
    }
}
