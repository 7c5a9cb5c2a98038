package hornwright.bench.sound;

import hornwright.bench.horn.Cup;
import hornwright.bench.plan.Because;
import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import hornwright.bench.plan.measured.CupGeometry;
import hornwright.bench.survey.Decision;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * How far the cups stood open when the horn was played, and how far they stand before anything is offered: at the height the
 * plan wants, the factory's or one a person settled, until heights are set; from then on where they stand. Millimetres at the
 * front edge.
 */
final class Openings {
    /** A height this close to another is the same. */
    private static final double SAME_MM = 0.05;

    private final SoundQuestion ask;
    private final Reasons reasons;
    private final Map<String, PlannedNumber> then = new LinkedHashMap<>();
    private final List<Cup> measured = new ArrayList<>();

    Openings(SoundQuestion ask, Reasons reasons) {
        this.ask = ask;
        this.reasons = reasons;
        ask.keywork().cups().forEach(cup -> then.put(cup.id(), stood(cup)));
    }

    /** As the cup stood in the play test. */
    PlannedNumber from(Cup cup) {
        return java.util.Objects.requireNonNull(then.get(cup.id()));
    }

    /** Where the cup stands before anything is offered; no surer than the gauge it is set with. */
    PlannedNumber start(Cup cup) {
        Optional<PlannedNumber> target = target(cup);
        return ask.heightsAreSet() || target.isEmpty() ? from(cup) : planned(cup, target.get());
    }

    /** Cups that stand elsewhere before anything is offered than when the horn was played, and where. */
    Map<Cup, Double> restored() {
        return elsewhere(cup -> start(cup).value());
    }

    /** The same with the factory's heights where a person settled others. */
    Map<Cup, Double> factory() {
        Map<String, Decision.Height> accepted = accepted();
        return elsewhere(cup -> accepted.containsKey(cup.id())
                ? cup.heightFrontMm()
                : start(cup).value());
    }

    /** The factory's height as far as the pattern knows it, for a cup a person settled otherwise. */
    PlannedNumber factory(Cup cup) {
        return CupGeometry.pattern(
                reasons,
                ask.rules(),
                ask.keywork(),
                "front height " + cup.hole(),
                cup.heightFrontMm(),
                "height.from-pattern_mm");
    }

    private Map<Cup, Double> elsewhere(ToDoubleFunction<Cup> height) {
        Map<Cup, Double> elsewhere = new LinkedHashMap<>();
        for (Cup cup : ask.keywork().cups()) {
            double mm = height.applyAsDouble(cup);
            if (Math.abs(mm - from(cup).value()) > SAME_MM) {
                elsewhere.put(cup, mm);
            }
        }
        return elsewhere;
    }

    private PlannedNumber planned(Cup cup, PlannedNumber target) {
        double wedge = ask.rules().value("u.wedge_mm");
        PlannedNumber aim = new PlannedNumber(target.value(), "mm", wedge, target.because(), null, null, null);
        return reasons.derive(
                "sound/start/" + cup.id(),
                "the height the plan wants; its ± is that of the gauge it is set with",
                "mm",
                in -> in[0],
                Because.Input.of("height wanted", aim));
    }

    private Optional<PlannedNumber> target(Cup cup) {
        return ask.plan().number("pad." + cup.hole(), NumberName.HEIGHT_TARGET);
    }

    /** A height that is aimed at: no surer than the gauge it is set with. */
    PlannedNumber set(Cup cup, double mm) {
        double wedge = ask.rules().value("u.wedge_mm");
        Because.Leaf leaf = new Because.BenchJudgement(
                ask.offered("sound/set/" + cup.id()), "a height aimed at; its ± is that of the gauge it is set with");
        return reasons.leaf(leaf, mm, "mm", wedge);
    }

    /** The horn as it was played. */
    HornShape shape() {
        Map<String, Double> heights = new HashMap<>();
        then.forEach((cup, number) -> heights.put(cup, number.value()));
        double bell = ask.rules().value("sound.bell-extra_mm");
        return new HornShape(heights, means(ReadingKind.HOLE), means(ReadingKind.AXIS_TO_CENTRE), bell, null);
    }

    /** One standard uncertainty of every height as the horn was played, by cup. */
    Map<String, Double> doubts() {
        Map<String, Double> doubts = new HashMap<>();
        then.forEach((cup, number) -> doubts.put(cup, number.u()));
        return doubts;
    }

    SoundAnswer.Known known() {
        Map<String, Double> holes = means(ReadingKind.HOLE);
        Map<String, Double> arms = means(ReadingKind.AXIS_TO_CENTRE);
        return new SoundAnswer.Known(
                measured,
                ask.keywork().cups().where(cup -> holes.containsKey(cup.hole())),
                ask.keywork().cups().where(cup -> arms.containsKey(cup.id())));
    }

    /** Heights a person settled against the factory's that were not yet made when the horn was played, by cup. */
    Map<String, Decision.Height> accepted() {
        Map<String, Decision.Height> accepted = new LinkedHashMap<>();
        if (ask.heightsAreSet()) {
            return accepted;
        }
        for (Decision decision : ask.decisions()) {
            if (decision instanceof Decision.Height height
                    && ask.keywork().cups().contains(height.cup())) {
                double factory = ask.keywork().cups().get(height.cup()).heightFrontMm();
                if (Math.abs(height.frontMm() - factory) > SAME_MM) {
                    accepted.put(height.cup(), height);
                }
            }
        }
        return accepted;
    }

    private PlannedNumber stood(Cup cup) {
        String pad = "pad." + cup.hole();
        boolean set = ask.heightsAreSet();
        Optional<PlannedNumber> read = ask.plan().number(pad, set ? NumberName.HEIGHT_NOW : NumberName.HEIGHT_BEFORE);
        if (read.isPresent()) {
            measured.add(cup);
            return read.get();
        }
        Optional<PlannedNumber> target = target(cup);
        return set && target.isPresent() ? set(cup, target.get().value()) : factory(cup);
    }

    private Map<String, Double> means(ReadingKind kind) {
        Map<String, double[]> sums = new HashMap<>();
        for (Reading reading : ask.readings()) {
            if (reading.kind() == kind && reading.observed() instanceof Observed.Amount amount && amount.value() > 0) {
                double[] sum = sums.computeIfAbsent(reading.of(), none -> new double[2]);
                sum[0] += amount.value();
                sum[1]++;
            }
        }
        Map<String, Double> means = new HashMap<>();
        sums.forEach((of, sum) -> means.put(of, sum[0] / sum[1]));
        return means;
    }
}
