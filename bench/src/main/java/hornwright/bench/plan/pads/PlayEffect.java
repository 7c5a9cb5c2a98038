package hornwright.bench.plan.pads;

import hornwright.bench.care.Hazard;
import hornwright.bench.plan.Advice;
import hornwright.bench.plan.Because;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import hornwright.bench.plan.measured.CupGeometry;
import hornwright.bench.plan.measured.HingePlay;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What play at the hinge does to the pad: the key can lie askew in its tube by clearance over tube length, which shifts
 * the pad by that slope times the arm and tilts it by the slope times the hole (plain geometry).
 *
 * @param clearance radial play across the diameter
 * @param shift of the pad along the hinge line
 * @param tilt across the hole
 * @param gates whether pad work waits for key fit
 */
record PlayEffect(String display, PlannedNumber clearance, PlannedNumber shift, PlannedNumber tilt, boolean gates) {

    static Optional<PlayEffect> of(PadQuestion ask, CupGeometry geometry, Reasons reasons) {
        return HingePlay.across(ask.hinges(), ask.plays(), ask.rules(), reasons)
                .map(clearance -> of(ask, geometry, clearance, reasons));
    }

    private static PlayEffect of(PadQuestion ask, CupGeometry geometry, PlannedNumber clearance, Reasons reasons) {
        PlannedNumber tube = tube(ask, reasons);
        Because.Input play = Because.Input.of("radial play", clearance);
        Because.Input length = Because.Input.of("tube length", tube);
        PlannedNumber shift = reasons.derive(
                ask.place() + "/playShift",
                "radial play / tube length x axis to centre",
                "mm",
                in -> in[0] / in[1] * in[2],
                play,
                length,
                geometry.armInput());
        PlannedNumber tilt = reasons.derive(
                ask.place() + "/playTilt",
                "radial play / tube length x hole diameter",
                "mm",
                in -> in[0] / in[1] * in[2],
                play,
                length,
                geometry.holeInput());
        boolean gates = clearance.value() >= ask.rules().value("play.accept_mm");
        return new PlayEffect(ask.display(), clearance, shift, tilt, gates);
    }

    String why() {
        return String.format(
                Locale.ROOT,
                "%s: key fit first; its play of about %.2f mm shifts the pad %.2f mm and tilts it %.2f mm across the"
                        + " hole, so its pad numbers are provisional",
                display,
                clearance.value(),
                shift.value(),
                tilt.value());
    }

    Advice advice() {
        return new Advice(
                "Take out the play of " + display + " before any pad work, then try a pad.",
                List.of(Hazard.SWEDGING),
                List.of());
    }

    /** The tube over which play is taken up; its pattern, else what an unknown tube usually has. */
    private static PlannedNumber tube(PadQuestion ask, Reasons reasons) {
        PlannedNumber share = reasons.rule(ask.rules(), "play.tube-share");
        PlannedNumber length = HingePlay.tube(ask.keywork(), ask.keywork().keyOf(ask.cup()), ask.rules(), reasons);
        return reasons.derive(
                ask.place() + "/tube",
                "tube length x share it is taken over",
                "mm",
                in -> in[0] * in[1],
                Because.Input.of("tube length", length),
                Because.Input.of("share", share));
    }
}
