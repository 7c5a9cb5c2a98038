package hornwright.bench.plan.order;

import hornwright.bench.horn.Keywork;
import hornwright.bench.plan.Reasons;
import hornwright.bench.plan.measured.ClearanceBand;
import hornwright.bench.plan.measured.HingePlay;
import hornwright.bench.plan.measured.ReadNumbers;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.survey.NeckCheck;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.PlayGrade;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.RimChoice;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What a reading says to the step it concerns: a figure to suit, a result, or a result that is bad when it is much. */
final class Readout {
    /** A grade or a word is as it was said. */
    private static final double SURE = 0;

    private final Keywork keywork;
    private final ShopRules rules;
    private final ReadNumbers read;

    Readout(Keywork keywork, ShopRules rules) {
        this.keywork = keywork;
        this.rules = rules;
        this.read = new ReadNumbers(rules, new Reasons());
    }

    Optional<Wanted> of(Reading reading) {
        return switch (reading.observed()) {
            case Observed.Amount amount ->
                read.amount(reading).map(number -> amount(reading, number.value(), number.u()));
            case Observed.RimGap gap ->
                Optional.of(judged(reading, gap.gapMm(), sure(reading, gap.gapMm(), gap.u()), rule("rim.accept_mm")));
            case Observed.Play play -> Optional.of(judged(reading, worse(play), SURE, PlayGrade.JUST_FELT.fromMm()));
            case Observed.TrialPad trial ->
                Optional.of(judged(
                        reading,
                        trial.oppositeGapMm(),
                        sure(reading, trial.oppositeGapMm(), trial.u()),
                        rule("rim.accept_mm")));
            case Observed.TrialShim shim ->
                shim.shimMm() > 0
                        ? Optional.of(new Wanted.Suited(figure(
                                reading,
                                (shim.withMm() - shim.withoutMm()) / shim.shimMm(),
                                Math.sqrt(2) * sure(reading, shim.withMm(), shim.u()) / shim.shimMm())))
                        : Optional.empty();
            case Observed.Pin pin -> Optional.of(new Wanted.Decided(pin.inWords()));
            case Observed.Says says -> said(reading, says.word());
        };
    }

    /** What a step was made to suit before anybody read such a thing: no metal had come off. */
    Optional<Wanted> before(Reading reading) {
        return reading.kind() == ReadingKind.METAL_OFF
                ? Optional.of(new Wanted.Suited(new Wanted.Figure("", null, 0, SURE, "none")))
                : Optional.empty();
    }

    private Wanted amount(Reading reading, double value, double u) {
        return switch (reading.kind()) {
            case CUP_INSIDE, CUP_DEPTH, HOLE, AXIS_TO_CENTRE, AXIS_TO_FOOT, METAL_OFF ->
                new Wanted.Suited(figure(reading, value, u));
            case HINGE -> hinge(reading, value, u);
            case CLEARANCE ->
                ClearanceBand.of(keywork, rules, reading.of(), reading.point())
                        .<Wanted>map(band -> judged(reading, band.outside(value), u, 0))
                        .orElse(new Wanted.Result(figure(reading, value, u)));
            case LOST_MOTION -> judged(reading, value, u, rule("touch.lost-accept_mm"));
            case LINKED_GAP, CONTACT_GAP -> judged(reading, value, u, rule("regulation.closed_mm"));
            case LEAK -> judged(reading, value, u, rule("leak.total_mL_per_s"));
            default -> new Wanted.Result(figure(reading, value, u));
        };
    }

    private Wanted hinge(Reading reading, double value, double u) {
        return switch (reading.point()) {
            case HingePlay.ACROSS -> judged(reading, value, u, rule("fit.accept_mm"));
            case HingePlay.ALONG -> judged(reading, value, u, rule("fit.end-accept_mm"));
            default -> new Wanted.Result(figure(reading, value, u));
        };
    }

    private Optional<Wanted> said(Reading reading, String word) {
        return switch (reading.kind()) {
            case LEAK_SITE -> Optional.of(judged(reading, word.equals("leaks") ? 1 : 0, SURE, 0));
            case RIM_CHECK ->
                Optional.of(
                        reading.point().equals(RimChoice.POINT)
                                ? new Wanted.Decided(word)
                                : judged(reading, word.equals("leaks") ? 1 : 0, SURE, 0));
            case NECK_CHECK ->
                NeckCheck.at(reading.point()).map(check -> judged(reading, check.badness(word), SURE, 0));
            case ADHESIVE_FOUND, FINISH_SIGN -> Optional.of(new Wanted.Noted(word));
            default -> Optional.empty();
        };
    }

    private Wanted judged(Reading reading, double value, double u, double limit) {
        return new Wanted.Judged(figure(reading, value, u), limit);
    }

    private static Wanted.Figure figure(Reading reading, double value, double u) {
        return new Wanted.Figure(
                reading.id(), reading.series(), value, u, reading.observed().inWords());
    }

    private double sure(Reading reading, double value, @Nullable Double u) {
        return read.part(reading, "gap", value, u).u();
    }

    private double rule(String name) {
        return rules.value(name);
    }

    private static double worse(Observed.Play play) {
        return Math.max(play.radial().fromMm(), play.end().fromMm());
    }
}
