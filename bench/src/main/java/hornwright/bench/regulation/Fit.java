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
 * @param covariance of the errors, mm²; the square of the prior where the readings say nothing of a contact alone
 */
record Fit(double[] errorsMm, double[][] covariance) {
    /**
     * Where no leaf goes in the pad may just touch or be well pressed in; taken as pressed in as it would be with all
     * contacts right, give or take so much, mm. A finger presses these pads in by 0.02 to 0.08.
     */
    private static final double BLIND = 0.04;

    private static final double DONE = 1e-5;
    private static final int MOST_STEPS = 60;
    private static final int ROUNDS = 6;
    private static final double HARDLY = 0.01;
    private static final double UNTOLD = 0.25;
    private static final double FIRST_DAMPING = 1e-3;

    /**
     * @param priorMm one standard deviation a contact is wrong by before anything is read
     * @param times how many times as hard as its touch was made for each key was pressed
     * @param share by which the force, and what gives under it, may differ from that
     */
    static Fit of(GapModel model, List<Feeler> readings, double priorMm, double times, double share) {
        Search search = new Search(model, readings, times, priorMm);
        search.run();
        search.give(model.givesMm(search.at, times, share));
        search.run();
        double[][] covariance = search.covariance();
        double[] deviations = deviations(covariance);
        for (int round = 0; round < ROUNDS; round++) {
            search.prefer(priorMm, deviations);
            search.run();
        }
        return new Fit(search.at, covariance);
    }

    /** One standard uncertainty of each error. */
    double[] uMm() {
        return deviations(covariance);
    }

    private static double[] deviations(double[][] covariance) {
        double[] deviations = new double[covariance.length];
        Arrays.setAll(deviations, i -> Math.sqrt(covariance[i][i]));
        return deviations;
    }

    /** One search; keeps the best place so far. */
    private static final class Search {
        private final GapModel model;
        private final List<Feeler> readings;
        private final double times;
        private final double[] prior;
        private final int size;
        private final double[] landed;
        private double[] gives;
        private double[] at;
        private Misfit misfit;

        Search(GapModel model, List<Feeler> readings, double times, double priorMm) {
            this.model = model;
            this.readings = readings;
            this.times = times;
            size = model.links().size();
            prior = new double[size];
            Arrays.fill(prior, priorMm);
            at = new double[size];
            landed = model.gapsMm(at, times);
            gives = new double[readings.size()];
            misfit = misfit(at);
        }

        /** What each gap may differ by though the contacts are as found: a gap that gives more tells less. */
        void give(double[] mm) {
            gives = mm;
            misfit = misfit(at);
        }

        /** What the readings tell of one contact alone is left to them. */
        void prefer(double priorMm, double[] deviations) {
            for (int i = 0; i < size; i++) {
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

        double[][] covariance() {
            return new Normal(misfit.slopes, misfit.values, at, prior, 0).covariance();
        }

        private Misfit misfit(double[] errors) {
            GapModel.Gaps gaps = model.gaps(errors, times);
            double[] values = new double[readings.size()];
            double[][] slopes = new double[values.length][size];
            for (int r = 0; r < values.length; r++) {
                Feeler reading = readings.get(r);
                double over = gaps.mm()[r] - reading.gapMm();
                boolean shut = reading.gapMm() == 0 && over <= 0;
                double u = shut ? BLIND : Math.hypot(reading.uMm(), gives[r]);
                values[r] = (shut ? over - landed[r] : over) / u;
                for (int k = 0; k < size; k++) {
                    slopes[r][k] = gaps.slopes()[r][k] / u;
                }
            }
            return new Misfit(values, slopes);
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

    /** Misfits over their uncertainty, and their slopes, [reading][contact]. */
    private record Misfit(double[] values, double[][] slopes) {}
}
