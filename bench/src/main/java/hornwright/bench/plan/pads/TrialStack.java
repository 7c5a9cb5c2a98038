package hornwright.bench.plan.pads;

import hornwright.bench.plan.Because;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import hornwright.bench.plan.measured.CupGeometry;
import hornwright.bench.plan.measured.ReadNumbers;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.Reading;

/** What a trial pad says: where it touched first and the feeler opposite, turned into how far the stack stood proud. */
final class TrialStack {
    private final PadQuestion ask;
    private final CupGeometry geometry;
    private final Reasons reasons;

    TrialStack(PadQuestion ask, CupGeometry geometry, Reasons reasons) {
        this.ask = ask;
        this.geometry = geometry;
        this.reasons = reasons;
    }

    PlannedNumber proud(Reading reading, Observed.TrialPad trial) {
        return switch (trial.verdict()) {
            case BACK_FIRST ->
                from(
                        "touched the back first: proud = gap at the front x (axis to centre - hole / 2) / hole",
                        reading,
                        trial,
                        LandingGaps::proud);
            case FRONT_FIRST ->
                from(
                        "touched the front first: shy = gap at the back x (axis to centre + hole / 2) / hole",
                        reading,
                        trial,
                        LandingGaps::shy);
            case LEVEL -> level(reading);
        };
    }

    private interface Lever {
        double proud(double gap, double hole, double arm);
    }

    private PlannedNumber from(String rule, Reading reading, Observed.TrialPad trial, Lever lever) {
        PlannedNumber gap = new ReadNumbers(ask.rules(), reasons)
                .part(reading, "feeler opposite", trial.oppositeGapMm(), trial.u());
        return reasons.derive(
                ask.place() + "/proud",
                rule,
                "mm",
                in -> lever.proud(in[0], in[1], in[2]),
                Because.Input.of("feeler opposite", gap),
                geometry.holeInput(),
                geometry.armInput());
    }

    /**
     * Level means no feeler above the shop's limit either way: spread evenly between limit x (arm - r) / hole proud and
     * limit x (arm + r) / hole shy, whose root mean square about level is limit / √3 x √((arm / hole)² + 3/4).
     */
    private PlannedNumber level(Reading reading) {
        PlannedNumber limit = reasons.rule(ask.rules(), "trial.level_mm");
        PlannedNumber seen = new ReadNumbers(ask.rules(), reasons).part(reading, "level", 0, 0.0);
        return reasons.derive(
                ask.place() + "/proud",
                "landed level: neither proud nor shy, within what passes as level",
                "mm",
                in -> in[0]
                        + (in[1] - limit.value())
                                * Math.sqrt(Math.pow(
                                                geometry.arm().value()
                                                        / geometry.hole().value(),
                                                2)
                                        + 0.75),
                Because.Input.of("level", seen),
                new Because.Input(
                        "passes as level", limit.value(), "mm", limit.value() / Math.sqrt(3), limit.because()));
    }
}
