package hornwright.bench.regulation;

import hornwright.bench.action.Action;
import hornwright.bench.regulation.Correction.Work;
import hornwright.bench.regulation.RegulationPlan.Expected;
import hornwright.bench.rules.Rule;
import hornwright.bench.rules.ShopRules;
import hornwright.engines.linkage.BenchOrder;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.NoSuchElementException;

/**
 * From feeler readings to what to add or take at every contact, all at once.
 *
 * <p>The contacts' errors are fitted to the readings in the elastic model of the whole action, key twist included. Large
 * errors are taken out whole, which leaves each contact in the middle of what its pads forgive. A contact too thick by less
 * than one pull of the sanding strip is either left or overdone by that one pull, whichever leaves the smaller gaps.
 */
public final class Regulation {
    /** A contact the readings narrow down to no less than this share of what was held possible is not told by them. */
    private static final double TOLD = 0.5;

    /** Worth of leaving a contact alone, against square millimetres of open gap. */
    private static final double TROUBLE = 1e-6;

    private final ShopRules rules;
    private final GapModel felt;
    private final GapModel judged;
    private final List<String> order;

    private Regulation(Action action, ShopRules rules) {
        this.rules = rules;
        felt = GapModel.of(action);
        judged = felt.watching(Watch.cups(action.keywork()));
        order = BenchOrder.of(action.mechanism().links()).links();
    }

    /** Regulation of one keywork by the rules of a shop. */
    public static Regulation of(Action action, ShopRules rules) {
        return new Regulation(action, rules);
    }

    /** Ids of the contacts whose thickness decides whether a cup shuts, in the order of the keywork. */
    public static List<String> contacts(Action action) {
        return GapModel.of(action).links();
    }

    /** The plan these readings lead to. Contacts none of them tells of are listed and left. */
    public RegulationPlan plan(List<Feeler> readings) {
        Fit fit = fit(readings);
        double[] change = chosen(fit);
        GapModel.Gaps after = judged.gaps(left(fit, change), times());
        double[] gaps = after.mm();
        List<Correction> corrections = new ArrayList<>();
        for (int i = 0; i < change.length; i++) {
            corrections.add(new Correction(
                    judged.links().get(i),
                    fit.errorsMm()[i],
                    fit.uMm()[i],
                    change[i],
                    work(fit, i, change, gaps),
                    told(fit, i)));
        }
        corrections.sort(Comparator.comparingInt(correction -> order.indexOf(correction.link())));
        List<Expected> expected = new ArrayList<>();
        double[] gives = judged.givesMm(left(fit, change), times(), rules.value("regulation.give-share"));
        for (int i = 0; i < gaps.length; i++) {
            double u = Math.hypot(gives[i], uncertainty(fit, change, after.slopes()[i]));
            expected.add(new Expected(judged.watches().get(i), gaps[i], u));
        }
        return new RegulationPlan(corrections, expected);
    }

    /** Contacts the readings do not tell apart are sure of each other though not of themselves: they go in as a whole. */
    private double uncertainty(Fit fit, double[] change, double[] slopes) {
        double cut = rules.value("regulation.cut-u_mm");
        double sum = 0;
        for (int i = 0; i < slopes.length; i++) {
            double worked = change[i] == 0 ? 0 : cut;
            sum += slopes[i] * slopes[i] * worked * worked;
            for (int k = 0; k < slopes.length; k++) {
                sum += slopes[i] * slopes[k] * fit.covariance()[i][k];
            }
        }
        return Math.sqrt(sum);
    }

    private boolean told(Fit fit, int link) {
        return fit.uMm()[link] < TOLD * rules.value("regulation.wrong_mm");
    }

    private Fit fit(List<Feeler> readings) {
        List<Watch> watches = readings.stream()
                .map(reading -> felt.watches().stream()
                        .filter(watch -> watch.press().equals(reading.press())
                                && watch.at().equals(reading.at()))
                        .findFirst()
                        .orElseThrow(() -> new NoSuchElementException(
                                "with " + reading.press() + " pressed nothing is felt at " + reading.at())))
                .toList();
        return Fit.of(
                felt.watching(watches),
                readings,
                rules.value("regulation.wrong_mm"),
                rules.value("regulation.feel-times"),
                share());
    }

    /** Finger and give together: by which share the force of the readings may be off. */
    private double share() {
        Rule feel = rules.get("regulation.feel-times");
        return Math.hypot(feel.u() / feel.value(), rules.value("regulation.give-share"));
    }

    private double times() {
        return rules.value("regulation.force-times");
    }

    private static double[] left(Fit fit, double[] change) {
        double[] left = fit.errorsMm().clone();
        for (int i = 0; i < left.length; i++) {
            left[i] += change[i];
        }
        return left;
    }

    /**
     * Large errors whole; a small one by whichever of nothing and the least that can be done leaves less open, one contact
     * after another. The least is one pull where it is too thick, all of it where it is too thin: that piece is new anyway.
     */
    private double[] chosen(Fit fit) {
        double pull = rules.value("foot.pull_mm");
        double[] change = new double[fit.errorsMm().length];
        List<Integer> small = new ArrayList<>();
        for (int i = 0; i < change.length; i++) {
            double error = fit.errorsMm()[i];
            if (Math.abs(error) >= pull) {
                change[i] = -error;
            } else {
                small.add(i);
            }
        }
        double least = cost(fit, change);
        boolean better = true;
        while (better) {
            better = false;
            for (int i : small) {
                double[] other = change.clone();
                other[i] = change[i] != 0 ? 0 : fit.errorsMm()[i] > 0 ? -pull : -fit.errorsMm()[i];
                double cost = cost(fit, other);
                if (cost < least) {
                    change = other;
                    least = cost;
                    better = true;
                }
            }
        }
        return change;
    }

    private double cost(Fit fit, double[] change) {
        double open = Arrays.stream(judged.gapsMm(left(fit, change), times()))
                .map(gap -> Math.max(0, gap) * Math.max(0, gap))
                .sum();
        return open + TROUBLE * Arrays.stream(change).filter(one -> one != 0).count();
    }

    private Work work(Fit fit, int link, double[] change, double[] gaps) {
        if (change[link] != 0) {
            return change[link] < 0 ? Work.TAKE : Work.ADD;
        }
        double closed = rules.value("regulation.closed_mm");
        double worst = Arrays.stream(gaps).max().orElse(0);
        if (worst <= closed) {
            return Work.LEAVE;
        }
        double[] exact = change.clone();
        exact[link] = -fit.errorsMm()[link];
        double[] then = judged.gapsMm(left(fit, exact), times());
        for (int i = 0; i < gaps.length; i++) {
            if (gaps[i] > closed && then[i] < gaps[i] - closed / 4) {
                return Work.SCREW;
            }
        }
        return Work.LEAVE;
    }
}
