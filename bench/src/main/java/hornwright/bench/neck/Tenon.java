package hornwright.bench.neck;

import hornwright.bench.plan.Because;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import hornwright.bench.plan.measured.ReadNumbers;
import hornwright.bench.sheet.SheetAsked;
import hornwright.bench.survey.NeckPoint;
import hornwright.bench.survey.ReadingKind;
import hornwright.engines.leak.Leak;
import hornwright.engines.leak.LeakInput;
import hornwright.engines.leak.Opening;
import hornwright.engines.leak.RoomAir;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The tenon in figures; whatever is empty has not been measured. */
final class Tenon {
    static final String NECK = "neck";

    private static final double ROOM = 293.15;
    private static final double PRESSURE = 1000;
    private static final double LOSS = 1.5;

    private final SheetAsked ask;
    private final Reasons reasons;
    private final ReadNumbers read;

    Tenon(SheetAsked ask, Reasons reasons) {
        this.ask = ask;
        this.reasons = reasons;
        this.read = new ReadNumbers(ask.rules(), reasons);
    }

    /** How much wider it is one way than the other, at the worse end. */
    Optional<PlannedNumber> outOfRound() {
        return worse(
                apart("upper", NeckPoint.TENON_UPPER, NeckPoint.TENON_UPPER_ACROSS),
                apart("lower", NeckPoint.TENON_LOWER, NeckPoint.TENON_LOWER_ACROSS));
    }

    /** How much wider its upper end is than its lower. */
    Optional<PlannedNumber> taper() {
        Optional<PlannedNumber> upper = mean("upper", NeckPoint.TENON_UPPER, NeckPoint.TENON_UPPER_ACROSS);
        Optional<PlannedNumber> lower = mean("lower", NeckPoint.TENON_LOWER, NeckPoint.TENON_LOWER_ACROSS);
        return upper.isEmpty() || lower.isEmpty()
                ? Optional.empty()
                : Optional.of(reasons.derive(
                        "neck/taper",
                        "mean at the upper end - mean at the lower end, either way",
                        "mm",
                        in -> Math.abs(in[0] - in[1]),
                        Because.Input.of("upper end", upper.get()),
                        Because.Input.of("lower end", lower.get())));
    }

    /** Between tenon and receiver, across the diameter, at the looser end. */
    Optional<PlannedNumber> gap() {
        Optional<PlannedNumber> receiver = at(NeckPoint.RECEIVER);
        Optional<PlannedNumber> tenon = smaller(
                mean("upper", NeckPoint.TENON_UPPER, NeckPoint.TENON_UPPER_ACROSS),
                mean("lower", NeckPoint.TENON_LOWER, NeckPoint.TENON_LOWER_ACROSS));
        return receiver.isEmpty() || tenon.isEmpty()
                ? Optional.empty()
                : Optional.of(reasons.derive(
                        "neck/gap",
                        "receiver - tenon at its smaller end",
                        "mm",
                        in -> in[0] - in[1],
                        Because.Input.of("receiver", receiver.get()),
                        Because.Input.of("tenon", tenon.get())));
    }

    /** Area of the ring between the two. */
    Optional<PlannedNumber> area() {
        return gap().filter(gap -> gap.value() > 0)
                .flatMap(gap -> at(NeckPoint.RECEIVER)
                        .map(receiver -> reasons.derive(
                                "neck/area",
                                "pi / 4 x (receiver squared - tenon squared)",
                                "mm²",
                                in -> Math.PI / 4 * (in[0] * in[0] - (in[0] - in[1]) * (in[0] - in[1])),
                                Because.Input.of("receiver", receiver),
                                Because.Input.of("gap", gap))));
    }

    /** The sharp-edged hole that leaks as much at 1 kPa, if the clamp closed nothing. */
    Optional<PlannedNumber> hole() {
        Optional<PlannedNumber> gap = gap().filter(wide -> wide.value() > 0);
        Optional<PlannedNumber> receiver = at(NeckPoint.RECEIVER);
        if (gap.isEmpty() || receiver.isEmpty()) {
            return Optional.empty();
        }
        PlannedNumber length =
                at(NeckPoint.TENON_LENGTH).orElseGet(() -> reasons.rule(ask.rules(), "neck.tenon-length_mm"));
        return Optional.of(reasons.derive(
                "neck/hole",
                "sharp-edged hole with the flow of a ring gap all round at 1 kPa (leak engine), if nothing closes it",
                "mm",
                in -> sharpHole(in[0], in[1], in[2]),
                Because.Input.of("gap", gap.get()),
                Because.Input.of("receiver", receiver.get()),
                Because.Input.of("length in the receiver", length)));
    }

    private static double sharpHole(double gapMm, double receiverMm, double lengthMm) {
        Opening.Slot slot =
                new Opening.Slot(Math.PI * receiverMm / 1e3, Math.max(0, gapMm) / 2e3, Math.max(0, lengthMm) / 1e3);
        LeakInput input = new LeakInput(new Opening.Slots(List.of(slot)), PRESSURE, LOSS, RoomAir.at(ROOM));
        return Leak.reckon(input).equivalentHole() * 1e3;
    }

    Optional<PlannedNumber> at(NeckPoint point) {
        return ask.last(ReadingKind.NECK, NECK, point.words()).flatMap(read::amount);
    }

    private Optional<PlannedNumber> apart(String end, NeckPoint one, NeckPoint other) {
        return both(one, other)
                .map(pair -> reasons.derive(
                        "neck/out of round, " + end,
                        "one way - the other, " + end + " end",
                        "mm",
                        in -> Math.abs(in[0] - in[1]),
                        pair));
    }

    private Optional<PlannedNumber> mean(String end, NeckPoint one, NeckPoint other) {
        Optional<PlannedNumber> mean = both(one, other)
                .map(pair -> reasons.derive(
                        "neck/mean, " + end,
                        "mean of two ways, " + end + " end",
                        "mm",
                        in -> (in[0] + in[1]) / 2,
                        pair));
        return mean.or(() -> at(one)).or(() -> at(other));
    }

    private Optional<List<Because.Input>> both(NeckPoint one, NeckPoint other) {
        Optional<PlannedNumber> first = at(one);
        Optional<PlannedNumber> second = at(other);
        return first.isEmpty() || second.isEmpty()
                ? Optional.empty()
                : Optional.of(List.of(
                        Because.Input.of(one.words(), first.get()), Because.Input.of(other.words(), second.get())));
    }

    private static Optional<PlannedNumber> worse(Optional<PlannedNumber> one, Optional<PlannedNumber> other) {
        return pick(one.orElse(null), other.orElse(null), true);
    }

    private static Optional<PlannedNumber> smaller(Optional<PlannedNumber> one, Optional<PlannedNumber> other) {
        return pick(one.orElse(null), other.orElse(null), false);
    }

    private static Optional<PlannedNumber> pick(
            @Nullable PlannedNumber one, @Nullable PlannedNumber other, boolean larger) {
        if (one == null || other == null) {
            return Optional.ofNullable(one == null ? other : one);
        }
        return Optional.of(one.value() > other.value() == larger ? one : other);
    }
}
