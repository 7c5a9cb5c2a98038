package hornwright.bench.plan.seat;

import hornwright.bench.care.Hazard;
import hornwright.bench.horn.RimKind;
import hornwright.bench.plan.Because;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import hornwright.bench.plan.seat.SeatAnswer.Remedy;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.PadClass;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * What to do about a pad that leaks at a light touch, in the order of the trade: key fit, the hole, the cup, and only then
 * another class of pad. Times are bench judgement.
 */
final class SeatRemedies {
    private static final int RIM = 2;
    private static final int PROUD = 3;
    private static final int TILT = 4;
    private static final int SKIN = 5;
    private static final int FELT = 6;
    private static final int FELT_FROM = 7;

    private final SeatQuestion ask;
    private final List<Because.Input> inputs;
    private final double[] now;
    private final Function<double[], Closing> closing;
    private final Reasons reasons;
    private final List<Remedy> list = new ArrayList<>();

    SeatRemedies(
            SeatQuestion ask,
            List<Because.Input> inputs,
            double[] now,
            Function<double[], Closing> closing,
            Reasons reasons) {
        this.ask = ask;
        this.inputs = inputs;
        this.now = now;
        this.closing = closing;
        this.reasons = reasons;
    }

    List<Remedy> list() {
        keyFit();
        hole();
        cup();
        softerPad();
        return List.copyOf(list);
    }

    private void keyFit() {
        if (isLoose()) {
            list.add(new Remedy(
                    "Take out the play: a loose key lands its pad in a new place each time",
                    after("key fit", Map.of(TILT, 0.0)),
                    "half an hour",
                    "cannot be undone",
                    List.of(Hazard.SWEDGING)));
        }
    }

    /** From the play on from which pad work waits for key fit. */
    private boolean isLoose() {
        return !ask.plays().isEmpty()
                && ask.plays().getLast().observed() instanceof Observed.Play felt
                && (felt.radial().fromMm() + felt.radial().toMm()) / 2
                        >= ask.rules().value("play.accept_mm");
    }

    private void hole() {
        double gap = now[RIM];
        PlannedNumber aim = reasons.rule(ask.rules(), "rim.level_mm");
        if (gap <= aim.value()) {
            return;
        }
        boolean small = gap < ask.rules().value("rim.act_mm");
        boolean rolled = ask.keywork().holeOf(ask.cup()).rim() == RimKind.ROLLED;
        String how = rolled ? "Lift the rim from inside" : "Level the hole: lift what is low from inside first";
        list.add(new Remedy(
                small
                        ? "Float the pad over the rim; " + how.toLowerCase(java.util.Locale.ROOT)
                                + " if it will not seal"
                        : how,
                after("levelling", Map.of(RIM, aim.value())),
                small ? "ten minutes" : "half an hour",
                small ? "can be undone" : "metal taken off does not come back",
                List.of(rolled ? Hazard.ROLLED_RIM : Hazard.LEVELLING)));
    }

    private void cup() {
        list.add(new Remedy(
                "Cup level on a flat and square to its hole, so that back and front land together",
                after("cup", Map.of(PROUD, 0.0)),
                "ten minutes",
                "partly",
                List.of(Hazard.BENDING)));
    }

    private void softerPad() {
        ask.pad().is().softer().ifPresent(this::softerPad);
    }

    private void softerPad(PadClass softer) {
        boolean warped = now[RIM] > ask.rules().value("rim.accept_mm");
        Map<Integer, Double> then = Map.of(
                SKIN, ask.rules().value(softer.rule()),
                FELT, ask.rules().value(softer.feltRule()),
                FELT_FROM, ask.rules().value(softer.feltFromRule()));
        if (ask.rules().value(softer.rule()) < now[SKIN]) {
            String words = "A softer pad, %s instead of %s"
                    .formatted(softer.word(), ask.pad().is().word());
            list.add(new Remedy(
                    warped
                            ? words + ": a compromise over a warped hole. It seals by force, feels spongy and hardens"
                            : words,
                    after("softer pad", then),
                    "a quarter of an hour",
                    "can be undone",
                    List.of(Hazard.HEAT)));
        }
    }

    /** The leak with some figures made good and known, the engine run again. */
    private PlannedNumber after(String name, Map<Integer, Double> made) {
        double[] then = now.clone();
        List<Because.Input> left = new ArrayList<>(inputs);
        made.forEach((i, value) -> {
            then[i] = value;
            Because.Input was = inputs.get(i);
            left.set(i, new Because.Input(was.name() + ", then", value, was.unit(), 0, was.because()));
        });
        Moved moved = Moved.of(then, left, x -> closing.apply(x).figures());
        PlannedNumber plain = reasons.derive(
                "seat/" + ask.cup().id() + "/leak after " + name,
                "leak at a light touch under 1 kPa: the seat engine run again with that made good",
                "mL/s",
                in -> moved.value(1),
                left);
        return new PlannedNumber(plain.value(), "mL/s", moved.u(1), plain.because(), null, null, null);
    }
}
