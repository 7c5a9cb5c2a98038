package hornwright.bench.fit;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Key;
import hornwright.bench.plan.Because;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import hornwright.bench.plan.measured.CupGeometry;
import hornwright.bench.plan.measured.HingePlay;
import hornwright.bench.sheet.SheetAsked;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One key on its rod. Whatever is null nobody has felt or measured, or it does not apply.
 *
 * @param across clearance between rod and tube
 * @param along play along the rod
 * @param edge what the clearance does at the far edge of the cup; null for a key without a cup
 * @param share of the tube that can be closed
 */
record KeyFit(
        Key key,
        @Nullable PlannedNumber across,
        @Nullable PlannedNumber along,
        @Nullable PlannedNumber edge,
        @Nullable PlannedNumber share) {

    static KeyFit of(SheetAsked ask, Key key, Reasons reasons) {
        List<Reading> hinges = ask.measured().of(ReadingKind.HINGE, key.id());
        List<Reading> plays = ask.measured().of(ReadingKind.PLAY, key.id());
        PlannedNumber across =
                HingePlay.across(hinges, plays, ask.rules(), reasons).orElse(null);
        PlannedNumber along =
                HingePlay.along(hinges, plays, ask.rules(), reasons).orElse(null);
        PlannedNumber tube = HingePlay.tube(ask.keywork(), key, ask.rules(), reasons);
        PlannedNumber edge = across == null
                ? null
                : ask.keywork()
                        .cupOf(key)
                        .map(cup -> edge(ask, cup, across, tube, reasons))
                        .orElse(null);
        PlannedNumber share = HingePlay.closable(hinges, ask.rules(), reasons)
                .map(closable -> share(key, closable, tube, reasons))
                .orElse(null);
        return new KeyFit(key, across, along, edge, share);
    }

    boolean untried() {
        return across == null && along == null;
    }

    /** The key lies askew in its tube by clearance over length; seen at the far edge of the cup (plain geometry). */
    private static PlannedNumber edge(
            SheetAsked ask, Cup cup, PlannedNumber across, PlannedNumber tube, Reasons reasons) {
        CupGeometry geometry = CupGeometry.of(ask.keywork(), cup, ask.measured(), ask.rules(), reasons);
        double half = cup.insideDiameterMm() / 2;
        return reasons.derive(
                "fit." + cup.key() + "/edge",
                "clearance / tube length x (axis to centre + half the cup), half the cup %.1f mm".formatted(half),
                "mm",
                in -> in[0] / in[1] * (in[2] + half),
                Because.Input.of("clearance", across),
                Because.Input.of("tube length", tube),
                geometry.armInput());
    }

    private static PlannedNumber share(Key key, PlannedNumber closable, PlannedNumber tube, Reasons reasons) {
        return reasons.derive(
                "fit." + key.id() + "/share",
                "tube that can be closed / tube length, at most all of it",
                "",
                in -> Math.min(1, in[0] / in[1]),
                Because.Input.of("tube that can be closed", closable),
                Because.Input.of("tube length", tube));
    }
}
