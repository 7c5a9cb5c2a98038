package hornwright.bench.regulation;

import hornwright.bench.action.Action;
import hornwright.bench.horn.AdjustingScrew;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Link;
import hornwright.bench.regulation.Correction.Work;
import hornwright.bench.regulation.RegulationPlan.Counted;
import hornwright.bench.regulation.RegulationPlan.Expected;
import hornwright.bench.rules.ShopRules;
import hornwright.engines.linkage.BenchOrder;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.stream.IntStream;

/**
 * From feeler readings to what to add or take at every contact, all at once.
 *
 * <p>The contacts' errors are fitted to the readings in the elastic model of the whole action, key twist included. What is
 * done is chosen so that after one round all named gaps are most likely shut: see {@link Choice}.
 */
public final class Regulation {
    /** A contact the readings narrow down to no less than this share of what was held possible is not told by them. */
    private static final double TOLD = 0.5;

    private final ShopRules rules;
    private final Keywork keywork;
    private final GapModel felt;
    private final GapModel judged;
    private final List<String> order;

    private Regulation(Action action, ShopRules rules) {
        this.rules = rules;
        keywork = action.keywork();
        felt = GapModel.of(action);
        judged = felt.watching(Watch.cups(keywork));
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

    /** Every spot where a feeler tells of a contact, in the order of the keywork. */
    public List<Watch> spots() {
        return felt.watches();
    }

    /** Gaps under the cups were the contacts wrong by these amounts, mm; the engine run once more. */
    public List<Expected> rerun(Map<String, Double> errorsMm) {
        double[] errors = judged.links().stream()
                .mapToDouble(link -> errorsMm.getOrDefault(link, 0.0))
                .toArray();
        double[] gaps = judged.gapsMm(errors, times());
        return IntStream.range(0, gaps.length)
                .mapToObj(i -> new Expected(judged.watches().get(i), gaps[i], 0))
                .toList();
    }

    /** The plan these readings lead to. Contacts none of them tells of are listed and left. */
    public RegulationPlan plan(List<Feeler> readings) {
        Fit fit = fit(readings);
        double[] ownU = ownU(fit, readings);
        double[] change = Choice.of(doubt(fit, ownU, rules.value("regulation.feel-times")), rules);
        double[] gaps = judged.gapsMm(fit.left(change), times());
        double[] gapUs = doubt(fit, ownU, times()).gapUMm(change);
        List<Correction> corrections = new ArrayList<>();
        for (int i = 0; i < change.length; i++) {
            corrections.add(new Correction(
                    judged.links().get(i),
                    fit.errorsMm()[i],
                    fit.uMm(i),
                    change[i],
                    work(judged.links().get(i), change[i]),
                    Arrays.stream(fit.gain()[i]).boxed().toList(),
                    told(fit, i)));
        }
        corrections.sort(Comparator.comparingInt(correction -> order.indexOf(correction.link())));
        List<Expected> expected = new ArrayList<>();
        for (int i = 0; i < gaps.length; i++) {
            expected.add(new Expected(judged.watches().get(i), gaps[i], gapUs[i]));
        }
        List<Counted> counted = IntStream.range(0, readings.size())
                .mapToObj(r -> new Counted(readings.get(r), fit.countedU()[r]))
                .toList();
        return new RegulationPlan(counted, corrections, expected);
    }

    private double[] ownU(Fit fit, List<Feeler> readings) {
        double[] own = new double[judged.watches().size()];
        Arrays.fill(own, Double.POSITIVE_INFINITY);
        for (int i = 0; i < own.length; i++) {
            Watch watch = judged.watches().get(i);
            for (int r = 0; r < readings.size(); r++) {
                if (readings.get(r).isAt(watch)) {
                    own[i] = Math.min(own[i], fit.countedU()[r]);
                }
            }
        }
        return own;
    }

    private boolean told(Fit fit, int link) {
        return fit.uMm(link) < TOLD * rules.value("regulation.wrong_mm");
    }

    private Fit fit(List<Feeler> readings) {
        List<Watch> watches = readings.stream()
                .map(reading -> felt.watches().stream()
                        .filter(reading::isAt)
                        .findFirst()
                        .orElseThrow(() -> new NoSuchElementException(
                                "with " + reading.press() + " pressed nothing is felt at " + reading.at())))
                .toList();
        return Fit.of(
                felt.watching(watches),
                readings,
                rules.value("regulation.wrong_mm"),
                new Fit.Finger(
                        rules.value("regulation.feel-times"),
                        rules.get("regulation.feel-times").u()),
                rules.value("regulation.give-share"));
    }

    /** What is done is chosen for a finger as light as that of the readings; what is left is told as regulation is judged. */
    private Doubt doubt(Fit fit, double[] ownU, double times) {
        return new Doubt(
                judged,
                fit,
                ownU,
                times,
                rules.value("regulation.give-share"),
                judged.links().stream()
                        .mapToDouble(link -> handUMm(keywork.links().get(link), rules))
                        .toArray());
    }

    /** One standard uncertainty of what the hand does at a contact: turns its screw by eye, or cuts against a gauge. */
    public static double handUMm(Link link, ShopRules rules) {
        AdjustingScrew screw = link.screw();
        return screw == null ? rules.value("regulation.cut-u_mm") : screw.pitchMm() * rules.value("regulation.turn-u");
    }

    private double times() {
        return rules.value("regulation.force-times");
    }

    /** Where there is a screw it does all; else less than one pull can neither be sanded off nor, as a sliver, be laid on. */
    private Work work(String link, double change) {
        if (change == 0) {
            return Work.LEAVE;
        }
        if (keywork.links().get(link).screw() != null) {
            return Work.SCREW;
        }
        if (change > 0) {
            return Work.ADD;
        }
        return change <= -rules.value("foot.pull_mm") ? Work.TAKE : Work.RENEW;
    }
}
