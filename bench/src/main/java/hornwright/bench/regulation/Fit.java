package hornwright.bench.regulation;

import java.util.Arrays;
import java.util.List;

/**
 * The errors of the contacts that explain the readings best: least squares of (reading - gap) / u over what the feeler
 * found. A leaf that does not go in says little of how deep the pad is pressed in. Levenberg and Marquardt's damped steps.
 *
 * <p>Readings may leave a choice: a touch without a cup of its own can stand a little higher with all its contacts
 * thicker. So the fit is repeated, each time holding those of the undecided contacts that were hardly needed tighter to
 * right as they are, which ends at few contacts that explain everything: the least work.
 *
 * @param errorsMm of each contact, positive too thick
 * @param covariance of the errors, mm²; where the readings say nothing of a contact alone it keeps the variance of the prior
 * @param gain [contact][reading]: how much an error follows each reading, mm per mm
 * @param countedU one standard uncertainty each reading was counted with, mm: a leaf that does not go in counts little
 */
record Fit(double[] errorsMm, double[][] covariance, double[][] gain, double[] countedU) {
    /**
     * Where no leaf goes in the pad may just touch or be well pressed in; taken as pressed in as it would be with all
     * contacts right, give or take so much, mm. A finger presses these pads in by 0.02 to 0.08.
     */
    private static final double BLIND = 0.04;

    private static final double DONE = 1e-4;
    private static final int MOST_STEPS = 40;
    private static final int ROUNDS = 4;
    private static final double HARDLY = 0.01;
    private static final double UNTOLD = 0.25;
    private static final double LIGHTEST = 0.3;
    private static final double HELD = 1e-3;
    private static final double MISSED = 2.5;
    private static final double LEAP = 0.1;
    private static final double FIRST_DAMPING = 1e-3;

    /**
     * @param priorMm one standard deviation a contact is wrong by before anything is read
     * @param finger how hard each key was pressed
     * @param giveShare by which share of the force what gives under it may differ from the pattern's
     */
    static Fit of(GapModel model, List<Feeler> readings, double priorMm, Finger finger, double giveShare) {
        Search search = new Search(model, readings, finger, priorMm);
        search.holdFingers(HELD);
        search.run();
        search.holdFingers(finger.u());
        search.give(model.givesMm(search.errors(), finger.times(), giveShare));
        search.run();
        search.leap();
        double[] deviations = deviations(search.covariance(priorMm));
        for (int round = 0; round < ROUNDS; round++) {
            search.prefer(priorMm, deviations);
            search.run();
        }
        double[][] all = search.covariance(priorMm);
        int contacts = model.links().size();
        double[][] covariance = new double[contacts][];
        for (int i = 0; i < contacts; i++) {
            covariance[i] = Arrays.copyOf(all[i], contacts);
        }
        return new Fit(Arrays.copyOf(search.at, contacts), covariance, search.gain(all), search.misfit.u);
    }

    /** What the errors come to once so much is added to each contact, mm. */
    double[] left(double[] changeMm) {
        double[] left = errorsMm.clone();
        for (int i = 0; i < left.length; i++) {
            left[i] += changeMm[i];
        }
        return left;
    }

    /** One standard uncertainty of one error. */
    double uMm(int contact) {
        return Math.sqrt(covariance[contact][contact]);
    }

    private static double[] deviations(double[][] covariance) {
        double[] deviations = new double[covariance.length];
        for (int i = 0; i < deviations.length; i++) {
            deviations[i] = Math.sqrt(covariance[i][i]);
        }
        return deviations;
    }

    /**
     * How many times as hard as its touch was made for a finger presses.
     *
     * @param u one standard uncertainty; each key has a press of its own
     */
    record Finger(double times, double u) {}

    /** One search over errors and fingers; keeps the best place so far. */
    private static final class Search {
        private final GapModel model;
        private final List<Feeler> readings;
        private final Finger finger;
        private final double[] prior;
        private final int contacts;
        private final int size;
        private final double[] landed;
        private double[] gives;
        private double[] at;
        private Misfit misfit;

        Search(GapModel model, List<Feeler> readings, Finger finger, double priorMm) {
            this.model = model;
            this.readings = readings;
            this.finger = finger;
            contacts = model.links().size();
            size = contacts + model.pressed().size();
            prior = prior(priorMm);
            at = new double[size];
            landed = model.gapsMm(at, finger.times());
            gives = new double[readings.size()];
            misfit = misfit(at);
        }

        /**
         * A reading that is missed by far says that the search stopped in a hollow of its own: it goes on from places where
         * one contact is quite otherwise, and stays with the best.
         */
        void leap() {
            for (int i = 0; i < contacts && misfit.worst() > MISSED; i++) {
                double here = at[i];
                for (double there : new double[] {here - LEAP, here + LEAP, -here}) {
                    from(i, there);
                }
            }
        }

        private void from(int contact, double mm) {
            double[] before = at;
            Misfit misfitBefore = misfit;
            at = at.clone();
            at[contact] = mm;
            misfit = misfit(at);
            run();
            if (cost(at, misfit) >= cost(before, misfitBefore)) {
                at = before;
                misfit = misfitBefore;
            }
        }

        double[] errors() {
            return Arrays.copyOf(at, contacts);
        }

        /** What each gap may differ by though the contacts are as found: a gap that gives more tells less. */
        void give(double[] mm) {
            gives = mm;
            misfit = misfit(at);
        }

        /** At first every press counts as exactly as hard as meant, until the contacts are about right. */
        void holdFingers(double u) {
            Arrays.fill(prior, contacts, size, u);
        }

        private double[] prior(double priorMm) {
            double[] even = new double[size];
            Arrays.fill(even, 0, contacts, priorMm);
            Arrays.fill(even, contacts, size, finger.u());
            return even;
        }

        /** What the readings tell of one contact alone is left to them. */
        void prefer(double priorMm, double[] deviations) {
            for (int i = 0; i < contacts; i++) {
                if (deviations[i] > UNTOLD * priorMm) {
                    prior[i] = Math.min(priorMm, Math.hypot(at[i], HARDLY));
                }
            }
        }

        void run() {
            double damping = FIRST_DAMPING;
            double cost = cost(at, misfit);
            for (int i = 0; i < MOST_STEPS && damping < 1e9; i++) {
                double[] step = new Normal(misfit.slopes, misfit.values, at, prior, damping).step();
                double[] tried = new double[size];
                double longest = 0;
                for (int k = 0; k < size; k++) {
                    tried[k] = at[k] + step[k];
                    longest = Math.max(longest, Math.abs(step[k]));
                }
                Misfit there = misfit(tried);
                double costThere = cost(tried, there);
                if (costThere < cost) {
                    at = tried;
                    misfit = there;
                    cost = costThere;
                    damping = Math.max(1e-9, damping / 8);
                } else {
                    damping *= 5;
                }
                if (longest < DONE) {
                    break;
                }
            }
        }

        double[][] covariance(double priorMm) {
            return new Normal(misfit.slopes, misfit.values, at, prior(priorMm), 0).inverse();
        }

        /** Covariance x slopes / u: the slope of the solution with each reading. */
        double[][] gain(double[][] covariance) {
            double[][] gain = new double[contacts][readings.size()];
            for (int i = 0; i < contacts; i++) {
                for (int r = 0; r < readings.size(); r++) {
                    for (int k = 0; k < size; k++) {
                        gain[i][r] += covariance[i][k] * misfit.slopes[r][k] / misfit.u[r];
                    }
                }
            }
            return gain;
        }

        private Misfit misfit(double[] place) {
            double[] fingers = Arrays.copyOfRange(place, contacts, size);
            for (int i = 0; i < fingers.length; i++) {
                fingers[i] = Math.max(LIGHTEST, finger.times() + fingers[i]);
            }
            GapModel.Gaps gaps = model.gaps(place, fingers);
            double[] values = new double[readings.size()];
            double[] counted = new double[values.length];
            double[][] slopes = new double[values.length][size];
            for (int r = 0; r < values.length; r++) {
                Feeler reading = readings.get(r);
                double over = gaps.mm()[r] - reading.gapMm();
                boolean shut = reading.gapMm() == 0 && over <= 0;
                double u = shut ? BLIND : Math.hypot(reading.uMm(), gives[r]);
                counted[r] = u;
                values[r] = (shut ? over - landed[r] : over) / u;
                for (int k = 0; k < size; k++) {
                    slopes[r][k] = gaps.slopes()[r][k] / u;
                }
            }
            return new Misfit(values, counted, slopes);
        }

        private double cost(double[] errors, Misfit misfits) {
            double cost = 0;
            for (double one : misfits.values) {
                cost += one * one;
            }
            for (int i = 0; i < size; i++) {
                cost += errors[i] * errors[i] / (prior[i] * prior[i]);
            }
            return cost;
        }
    }

    /** Misfits over their uncertainty u, and their slopes, [reading][contact]. */
    private record Misfit(double[] values, double[] u, double[][] slopes) {
        double worst() {
            return Arrays.stream(values).map(Math::abs).max().orElse(0);
        }
    }
}
