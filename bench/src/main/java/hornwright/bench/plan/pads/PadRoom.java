package hornwright.bench.plan.pads;

import hornwright.bench.horn.Cup;
import hornwright.bench.plan.Because;
import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import hornwright.bench.plan.measured.CupGeometry;
import hornwright.bench.plan.measured.ReadNumbers;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.Reading;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The room a pad and its adhesive have: cup floor to hole rim with the key closed, plus the seat the pad makes. The floor
 * to the rim cannot be measured directly; a trial pad gives it, else cup depth and a usual gap stand in.
 *
 * @param floorToRim cup floor to hole rim, key closed and cup parallel
 * @param room pad plus adhesive
 * @param parallelGap cup rim to hole rim
 * @param projection pad face beyond the cup rim, before it is seated
 * @param proud how far the trial stack stood proud, negative when shy; null without a trial
 * @param trial the trial it rests on; null without one
 */
record PadRoom(
        PlannedNumber floorToRim,
        PlannedNumber room,
        PlannedNumber parallelGap,
        PlannedNumber projection,
        @Nullable PlannedNumber proud,
        Observed.@Nullable TrialPad trial) {

    static PadRoom of(PadQuestion ask, CupGeometry geometry, Reasons reasons) {
        PlannedNumber seat = seat(ask, reasons);
        PlannedNumber depth = depth(ask, reasons);
        Reading last = ask.trials().isEmpty() ? null : ask.trials().getLast();
        return last != null && last.observed() instanceof Observed.TrialPad trial
                ? tried(ask, geometry, reasons, last, trial, seat, depth)
                : untried(ask, reasons, seat, depth);
    }

    void put(Map<NumberName, PlannedNumber> numbers) {
        numbers.put(NumberName.FLOOR_TO_RIM, floorToRim);
        numbers.put(NumberName.PARALLEL_GAP, parallelGap);
        numbers.put(NumberName.PROJECTION, projection);
        if (proud != null) {
            numbers.put(NumberName.PROUD, proud);
        }
    }

    private static PadRoom tried(
            PadQuestion ask,
            CupGeometry geometry,
            Reasons reasons,
            Reading reading,
            Observed.TrialPad trial,
            PlannedNumber seat,
            PlannedNumber depth) {
        PlannedNumber proud = new TrialStack(ask, geometry, reasons).proud(reading, trial);
        double within = ask.rules().value("pad.thickness-within_mm") / Math.sqrt(3);
        PlannedNumber stack =
                new ReadNumbers(ask.rules(), reasons).part(reading, "thickness of the stack", trial.stackMm(), within);
        PlannedNumber floor = reasons.derive(
                ask.place() + "/floorToRim",
                "trial stack - how far it stood proud",
                "mm",
                in -> in[0] - in[1],
                Because.Input.of("stack", stack),
                Because.Input.of("proud", proud));
        PlannedNumber gap = reasons.derive(
                ask.place() + "/parallelGap",
                "cup floor to hole rim - cup depth",
                "mm",
                in -> in[0] - in[1],
                Because.Input.of("floor to rim", floor),
                Because.Input.of("cup depth", depth));
        return new PadRoom(
                floor, room(ask, reasons, floor, seat), gap, projection(ask, reasons, gap, seat), proud, trial);
    }

    private static PadRoom untried(PadQuestion ask, Reasons reasons, PlannedNumber seat, PlannedNumber depth) {
        PlannedNumber gap = Aims.patternUnlessSet(
                ask, reasons, "gap between the rims", "parallel-gap." + ask.sizeClass() + "_mm", Cup::parallelGapMm);
        PlannedNumber floor = reasons.derive(
                ask.place() + "/floorToRim",
                "cup depth + the gap between the rims the maker had, until a trial pad tells",
                "mm",
                in -> in[0] + in[1],
                Because.Input.of("cup depth", depth),
                Because.Input.of("gap by pattern", gap));
        return new PadRoom(
                floor, room(ask, reasons, floor, seat), gap, projection(ask, reasons, gap, seat), null, null);
    }

    private static PlannedNumber room(PadQuestion ask, Reasons reasons, PlannedNumber floor, PlannedNumber seat) {
        return reasons.derive(
                ask.place() + "/room",
                "cup floor to hole rim + seat depth: what pad and adhesive share",
                "mm",
                in -> in[0] + in[1],
                Because.Input.of("floor to rim", floor),
                Because.Input.of("seat depth", seat));
    }

    private static PlannedNumber projection(PadQuestion ask, Reasons reasons, PlannedNumber gap, PlannedNumber seat) {
        return reasons.derive(
                ask.place() + "/projection",
                "gap between the rims + seat depth",
                "mm",
                in -> in[0] + in[1],
                Because.Input.of("gap between the rims", gap),
                Because.Input.of("seat depth", seat));
    }

    private static PlannedNumber depth(PadQuestion ask, Reasons reasons) {
        return new ReadNumbers(ask.rules(), reasons)
                .mean(ask.place() + "/cupDepth", "mean of the cup depths read", ask.depths())
                .orElseGet(() -> unread(ask, reasons));
    }

    /** As the maker's cups are, unless the shop has set a figure of its own. */
    private static PlannedNumber unread(PadQuestion ask, Reasons reasons) {
        String typical = "cup-depth." + ask.sizeClass() + "_mm";
        return ask.rules().get(typical).asShipped()
                ? CupGeometry.pattern(
                        reasons,
                        ask.rules(),
                        ask.keywork(),
                        "cup depth " + ask.cup().hole(),
                        ask.cup().depthMm(),
                        "cup-depth.from-pattern_mm")
                : reasons.rule(ask.rules(), typical);
    }

    /** The seat the maker's pads took, unless the shop has set its own. */
    private static PlannedNumber seat(PadQuestion ask, Reasons reasons) {
        return Aims.patternUnlessSet(ask, reasons, "seat depth", "seat.depth_mm", Cup::seatDepthMm);
    }
}
