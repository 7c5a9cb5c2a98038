package hornwright.engines.belief;

import java.util.Arrays;

/** The courses under each rate of error that is thought possible, each rate weighed by how well it explains what was seen. */
final class Weighed {
    private final Laws laws;
    private final Courses[] courses;
    private final double[] weights;
    private final int n;
    private final double logEvidence;

    Weighed(Positions seen, Laws laws, Workshop assumed) {
        this.laws = laws;
        n = seen.size();
        courses = assumed.errors().stream()
                .map(error -> new Courses(new Fit(seen, laws, error), laws, assumed.change()))
                .toArray(Courses[]::new);
        double[] logs = Arrays.stream(courses).mapToDouble(Courses::logEvidence).toArray();
        double largest = Arrays.stream(logs).max().orElse(0);
        weights = Arrays.stream(logs).map(log -> Math.exp(log - largest)).toArray();
        double sum = Arrays.stream(weights).sum();
        Arrays.setAll(weights, i -> weights[i] / sum);
        logEvidence = largest + Math.log(sum / courses.length);
    }

    double logEvidence() {
        return logEvidence;
    }

    /** Chance of each way at a position. */
    double[] chances(int position) {
        double[] chances = new double[laws.ways()];
        for (int e = 0; e < courses.length; e++) {
            courses[e].addChances(position, weights[e], chances);
        }
        return chances;
    }

    /** Chance of each material on the horn seen at a position. */
    double[] horn(int position) {
        double[] sum = new double[laws.materials];
        for (int e = 0; e < courses.length; e++) {
            courses[e].addHorn(position, weights[e], sum);
        }
        return sum;
    }

    /** Probability of another way at each position than at the one before it; of the first, 0. */
    double[] changedBefore() {
        double[] changed = new double[n];
        for (int i = 1; i < n; i++) {
            changed[i] = new Stretch(i).changed();
        }
        return changed;
    }

    /** A growing run of positions. */
    final class Stretch {
        private final double[][] kept;
        private int low;
        private int high;

        /** The position and the one before it. */
        Stretch(int position) {
            low = position - 1;
            high = position;
            kept = new double[courses.length][laws.ways()];
            for (double[] one : kept) {
                Arrays.fill(one, 1);
            }
            through(position);
        }

        private void through(int position) {
            for (int e = 0; e < courses.length; e++) {
                courses[e].keepTo(position, kept[e]);
            }
        }

        void lower() {
            through(low);
            low--;
        }

        void higher() {
            high++;
            through(high);
        }

        int low() {
            return low;
        }

        int high() {
            return high;
        }

        /** Probability of at least one change inside. */
        double changed() {
            double sum = 0;
            for (int e = 0; e < courses.length; e++) {
                sum += weights[e] * courses[e].kept(low, high, kept[e]);
            }
            return Math.max(0, 1 - sum);
        }
    }
}
