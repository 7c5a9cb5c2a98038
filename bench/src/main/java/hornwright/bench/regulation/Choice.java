package hornwright.bench.regulation;

import hornwright.bench.rules.ShopRules;
import java.util.Arrays;

/**
 * Which contacts to alter by how much, so that after one round all named gaps are most likely shut. What is known of the
 * errors, correlations included, and what the hand adds to each contact it touches both count. A contact that is better
 * left alone is left alone, and one whose cups forgive more on one side is set towards that side.
 *
 * <p>Starts from every large error taken out whole and then moves one contact at a time while that helps.
 */
final class Choice {
    /** A change must raise the chance that everything is shut by more than about this share to be worth the work. */
    private static final double TROUBLE = 0.1;

    /** An error of less than so many of its own uncertainties may be none at all. */
    private static final double TELLING = 2;

    /** A logistic curve of this steepness is within 0.01 of the normal distribution. */
    private static final double LOGISTIC = 1.702;

    private static final double[] NUDGES = {0.008, 0.004};
    private static final int MOST_SWEEPS = 2;

    private final Doubt doubt;
    private final Fit fit;
    private final double closedMm;
    private double[] change;
    private double[] open;
    private double least;

    private Choice(Doubt doubt, double closedMm) {
        this.doubt = doubt;
        this.fit = doubt.fit();
        this.closedMm = closedMm;
        change = new double[fit.errorsMm().length];
        open = new double[0];
    }

    /** What is added to each contact, mm. */
    static double[] of(Doubt doubt, ShopRules rules) {
        Choice choice = new Choice(doubt, rules.value("regulation.closed_mm"));
        double leastMm = rules.value("foot.pull_mm");
        for (int i = 0; i < choice.change.length; i++) {
            double error = choice.fit.errorsMm()[i];
            choice.change[i] = Math.abs(error) >= leastMm ? -error : 0;
        }
        choice.weigh();
        choice.wholeOrNothing();
        for (double nudge : NUDGES) {
            choice.weigh();
            choice.nudge(nudge);
        }
        return choice.change;
    }

    private void wholeOrNothing() {
        boolean better = true;
        for (int sweep = 0; sweep < MOST_SWEEPS && better; sweep++) {
            better = false;
            for (int i = 0; i < change.length; i++) {
                if (change[i] != 0) {
                    better |= tried(i, 0);
                } else if (Math.abs(fit.errorsMm()[i]) > TELLING * fit.uMm(i)) {
                    better |= tried(i, -fit.errorsMm()[i]);
                }
            }
        }
    }

    private void nudge(double by) {
        boolean better = true;
        for (int sweep = 0; sweep < MOST_SWEEPS && better; sweep++) {
            better = false;
            for (int i = 0; i < change.length; i++) {
                if (change[i] != 0) {
                    better |= tried(i, change[i] + by) || tried(i, change[i] - by);
                }
            }
        }
    }

    private boolean tried(int contact, double mm) {
        double[] other = change.clone();
        other[contact] = mm;
        double cost = cost(other);
        if (cost >= least) {
            return false;
        }
        change = other;
        least = cost;
        return true;
    }

    /** How far each gap may open beyond what is expected, at the change as it stands. */
    private void weigh() {
        open = doubt.gapUMm(change);
        least = cost(change);
    }

    private double cost(double[] tried) {
        double[] gaps = doubt.judged().gapsMm(fit.left(tried), doubt.times());
        double cost = TROUBLE * Arrays.stream(tried).filter(one -> one != 0).count();
        for (int i = 0; i < gaps.length; i++) {
            double room = (closedMm - gaps[i]) / Math.max(open[i], 1e-4);
            cost += Math.log1p(Math.exp(-LOGISTIC * room));
        }
        return cost;
    }
}
