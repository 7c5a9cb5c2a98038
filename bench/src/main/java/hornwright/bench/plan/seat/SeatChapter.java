package hornwright.bench.plan.seat;

import hornwright.bench.horn.Key;
import hornwright.bench.horn.Rest;
import hornwright.bench.horn.Touch;
import hornwright.bench.plan.Because;
import hornwright.bench.plan.ClassOfPad;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import hornwright.bench.plan.measured.CupGeometry;
import hornwright.bench.plan.measured.ReadNumbers;
import hornwright.bench.plan.seat.SeatAnswer.Closes;
import hornwright.bench.plan.seat.SeatAnswer.Round;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.PadClass;
import hornwright.bench.survey.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Closes one pad in the engine, with what is not known of it carried through. */
public final class SeatChapter {
    private static final int LOAD = 8;
    private static final String GROUNDS =
            ": the seat engine, on a saddle as deep as the worst rim gap; each figure moved down and up by its doubt, the"
                    + " larger differences added by their squares";

    private final SeatQuestion ask;
    private final Reasons reasons = new Reasons();
    private final List<Because.Input> inputs = new ArrayList<>();
    private final PlannedNumber pad;
    private final double clock;
    private final boolean rimRead;

    private SeatChapter(SeatQuestion ask) {
        this.ask = ask;
        CupGeometry geometry = CupGeometry.of(ask.keywork(), ask.cup(), ask.holes(), ask.arms(), ask.rules(), reasons);
        Reading last = ask.rimGaps().isEmpty() ? null : ask.rimGaps().getLast();
        Observed.RimGap rim = last != null && last.observed() instanceof Observed.RimGap gap ? gap : null;
        this.rimRead = rim != null;
        this.clock = rim == null ? 12 : rim.clock();
        inputs.add(geometry.holeInput());
        inputs.add(geometry.armInput());
        inputs.add(Because.Input.of("worst rim gap", rimGap(last, rim)));
        inputs.add(Because.Input.of("pad stands proud by", proud()));
        inputs.add(Because.Input.of("tilt the play allows", tilt()));
        PadClass is = ask.pad().is();
        this.pad = chosen("stiffness", "skin", "MPa", is.rule());
        inputs.add(Because.Input.of("stiffness of its skin", pad));
        inputs.add(Because.Input.of("stiffness of its felt", chosen("felt", "felt", "MPa", is.feltRule())));
        inputs.add(Because.Input.of("felt takes over after", chosen("felt from", "felt", "mm", is.feltFromRule())));
        inputs.add(Because.Input.of("force on the pad", load()));
        inputs.add(Because.Input.of("width of the seat", reasons.rule(ask.rules(), "seat.width_mm")));
    }

    /** Empty when the hinge would lie inside the hole. */
    public static Optional<SeatAnswer> of(SeatQuestion ask) {
        SeatChapter chapter = new SeatChapter(ask);
        return chapter.closing(chapter.values()).possible() ? Optional.of(chapter.answer()) : Optional.empty();
    }

    private PlannedNumber rimGap(@Nullable Reading last, Observed.@Nullable RimGap rim) {
        return last == null || rim == null
                ? reasons.rule(ask.rules(), "rim.unmeasured_mm")
                : new ReadNumbers(ask.rules(), reasons)
                        .part(last, "worst gap at %s o'clock".formatted(rim.clock()), rim.gapMm(), rim.u());
    }

    private PlannedNumber proud() {
        double u = ask.rules().value("assembly.pad-u_mm");
        PlannedNumber rule = reasons.rule(ask.rules(), "assembly.pad-u_mm");
        return new PlannedNumber(0, "mm", u, rule.because(), null, null, null);
    }

    /** Which way a loose key lies nobody knows: no tilt, give or take what its play allows. */
    private PlannedNumber tilt() {
        if (ask.plays().isEmpty() || !(ask.plays().getLast().observed() instanceof Observed.Play felt)) {
            return reasons.leaf(
                    new Because.BenchJudgement("no play", "nobody felt play; the key is taken to fit"), 0, "mrad", 0);
        }
        double tube = Math.max(
                ask.keywork().keyOf(ask.cup()).tube().lengthMm(), ask.rules().value("hinge.tube-length_mm") / 2);
        double middle = (felt.radial().fromMm() + felt.radial().toMm()) / 2;
        Reading reading = ask.plays().getLast();
        return reasons.leaf(
                new Because.FromReading(
                        "reading " + reading.id() + ", tilt",
                        "play \"%s\" over the length of its tube"
                                .formatted(felt.radial().word()),
                        reading.id(),
                        reading.instrument()),
                0,
                "mrad",
                1e3 * middle / tube / 2);
    }

    private PlannedNumber chosen(String name, String part, String unit, String rule) {
        ClassOfPad chosen = ask.pad();
        return reasons.derive(
                "seat/%s/%s".formatted(ask.cup().id(), name),
                "a %s pad, %s".formatted(chosen.is().word(), chosen.why()),
                unit,
                in -> in[0],
                Because.Input.of(
                        "%s of a %s pad".formatted(part, chosen.is().word()), reasons.rule(ask.rules(), rule)));
    }

    /** A light finger, or for a pad that rests shut what its springs give. */
    private PlannedNumber load() {
        if (ask.cup().rest() == Rest.OPEN) {
            return reasons.rule(ask.rules(), "seat.light_N");
        }
        PlannedNumber share = reasons.rule(ask.rules(), "spring.pull-share");
        PlannedNumber held = reasons.leaf(
                new Because.FromPattern(
                        "pattern held " + ask.cup().id(),
                        "force of the springs of the pattern on this pad, nothing pressed (linkage engine)",
                        ask.keywork().id()),
                ask.springN(),
                "N",
                0);
        return reasons.derive(
                "seat/" + ask.cup().id() + "/held",
                "force of its springs on the pad; springs nobody has weighed may pull more or less",
                "N",
                in -> in[0] * in[1],
                Because.Input.of("by pattern", held),
                Because.Input.of("share they pull", share));
    }

    private double[] values() {
        return inputs.stream().mapToDouble(Because.Input::value).toArray();
    }

    private Closing closing(double[] x) {
        return new Closing(
                x[0],
                x[1],
                Math.max(0, x[2]),
                clock,
                x[3],
                x[4] / 1e3,
                Math.max(0.01, x[5]),
                Math.max(0.01, x[6]),
                Math.max(0, x[7]),
                Math.max(0, x[LOAD]),
                x[9]);
    }

    private SeatAnswer answer() {
        Moved moved = Moved.of(values(), inputs, x -> closing(x).figures());
        PlannedNumber gap = number("gap", "worst gap left at a light touch", "mm", moved, 0);
        PlannedNumber leak = number("leak", "leak at a light touch under 1 kPa", "mL/s", moved, 1);
        PlannedNumber hole = number("hole", "the one sharp-edged hole that leaks as much", "mm", moved, 2);
        PlannedNumber seals = number("seals", "force on the pad at which its last gap closes", "N", moved, 3);
        Closes closes = closes(leak);
        return new SeatAnswer(
                ask.cup().id(),
                ask.display(),
                gap,
                Closing.clock(closing(values()).result().largestGapAngle()),
                leak,
                hole,
                seals,
                atTouch(seals),
                springs(seals),
                pad,
                ask.pad(),
                rimRead,
                rimRead
                                && ask.pad()
                                        .isCompromise(
                                                inputs.get(2).value(),
                                                ask.rules().value("rim.accept_mm"))
                        ? inputs.get(2).value()
                        : null,
                closes,
                Stream.of(PadClass.values()).map(this::round).toList(),
                closes == Closes.CLOSES
                        ? List.of()
                        : new SeatRemedies(ask, inputs, values(), this::closing, reasons).list(),
                reasons.table());
    }

    private PlannedNumber number(String name, String says, String unit, Moved moved, int figure) {
        PlannedNumber plain = reasons.derive(
                "seat/" + ask.cup().id() + "/" + name, says + GROUNDS, unit, in -> moved.value(figure), inputs);
        return new PlannedNumber(plain.value(), unit, moved.u(figure), plain.because(), null, null, null);
    }

    private Closes closes(PlannedNumber leak) {
        double passes = ask.rules().value("seat.leak-passes_mL_per_s");
        if (leak.value() + 2 * leak.u() <= passes) {
            return Closes.CLOSES;
        }
        return leak.value() - 2 * leak.u() > passes ? Closes.LEAKS : Closes.MAY_LEAK;
    }

    private Round round(PadClass padClass) {
        double[] x = values();
        x[5] = ask.rules().value(padClass.rule());
        x[6] = ask.rules().value(padClass.feltRule());
        x[7] = ask.rules().value(padClass.feltFromRule());
        return new Round(padClass, closing(x).round());
    }

    private @Nullable PlannedNumber atTouch(PlannedNumber seals) {
        Key key = ask.keywork().keyOf(ask.cup());
        Touch touch = key.touch();
        if (touch == null || !touch.closes() || ask.cup().rest() == Rest.CLOSED) {
            return null;
        }
        PlannedNumber arm = CupGeometry.pattern(
                reasons, ask.rules(), ask.keywork(), "touch arm " + key.id(), touch.armMm(), "arm.from-pattern_mm");
        return reasons.derive(
                "seat/" + ask.cup().id() + "/touch",
                "force on the pad that seals x axis to cup / axis to touch",
                "N",
                in -> in[0] * in[1] / in[2],
                Because.Input.of("force that seals", seals),
                inputs.get(1),
                Because.Input.of("axis to touch", arm));
    }

    private @Nullable PlannedNumber springs(PlannedNumber seals) {
        if (ask.cup().rest() == Rest.OPEN || !(seals.value() > 0)) {
            return null;
        }
        return reasons.derive(
                "seat/" + ask.cup().id() + "/springs",
                "force of its springs over the force that seals",
                "",
                in -> in[0] / Math.max(in[1], 1e-3),
                inputs.get(LOAD),
                Because.Input.of("force that seals", seals));
    }
}
