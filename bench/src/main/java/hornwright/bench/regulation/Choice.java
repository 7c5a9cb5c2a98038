package hornwright.bench.regulation;

import hornwright.bench.rules.ShopRules;

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

    /** The same for a contact that may well be right as it is, and is altered only for the sake of others. */
    private static final double MORE_TROUBLE = 0.3;

    /** An error of less than so many of its own uncertainties may be none at all. */
    private static final double TELLING = 2;

    /** A logistic curve of this steepness is within 0.01 of the normal distribution. */
    private static final double LOGISTIC = 1.702;

    /** Any contact may be moved so far where that shuts what would stay open, whether or not it is wrong itself. */
    private static final double[] REACHES = {0.06, 0.03, 0.015};

    /** A gap that stays open less often than this is left out of mind. */
    private static final double RISKY = 0.03;

    private static final double[] NUDGES = {0.008, 0.004};
    private static final int MOST_SWEEPS = 2;

    private final Doubt doubt;
    private final Fit fit;
    private final double closedMm;
    private double[] change;
    private double[] open;
    private double least;

    /** -log of the chance that each gap is shut: at the change as it stands, and at the one looked at last. */
    private double[] risk = {};

    private double[] lastRisk = {};

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
        for (double reach : REACHES) {
            choice.weigh();
            choice.move(reach, true);
        }
        for (double nudge : NUDGES) {
            choice.weigh();
            choice.move(nudge, false);
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
                } else if (isTelling(i)) {
                    better |= tried(i, -fit.errorsMm()[i]);
                }
            }
        }
    }

    /** One contact at a time, while that helps. */
    private void move(double by, boolean any) {
        boolean better = true;
        for (int sweep = 0; sweep < MOST_SWEEPS && better; sweep++) {
            better = false;
            for (int i = 0; i < change.length; i++) {
                if (any ? mayHelp(i) : change[i] != 0) {
                    better |= tried(i, change[i] + by) || tried(i, change[i] - by);
                }
            }
        }
    }

    private boolean isTelling(int contact) {
        return Math.abs(fit.errorsMm()[contact]) > TELLING * fit.uMm(contact);
    }

    /** Whether a cup this contact bears on may well stay open. */
    private boolean mayHelp(int contact) {
        for (int gap = 0; gap < risk.length; gap++) {
            if (risk[gap] > RISKY && doubt.judged().bears(contact, gap)) {
                return true;
            }
        }
        return false;
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
        risk = lastRisk;
        return true;
    }

    /** How far each gap may open beyond what is expected, at the change as it stands. */
    private void weigh() {
        open = doubt.gapUMm(change);
        least = cost(change);
        risk = lastRisk;
    }

    private double cost(double[] tried) {
        double[] gaps = doubt.judged().gapsMm(fit.left(tried), doubt.times());
        double cost = 0;
        for (int i = 0; i < tried.length; i++) {
            cost += tried[i] == 0 ? 0 : isTelling(i) ? TROUBLE : MORE_TROUBLE;
        }
        for (int i = 0; i < gaps.length; i++) {
            double room = (closedMm - gaps[i]) / Math.max(open[i], 1e-4);
            gaps[i] = Math.log1p(Math.exp(-LOGISTIC * room));
            cost += gaps[i];
        }
        lastRisk = gaps;
        return cost;
    }
}
