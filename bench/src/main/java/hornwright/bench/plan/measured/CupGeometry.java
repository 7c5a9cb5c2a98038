package hornwright.bench.plan.measured;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.ToneHole;
import hornwright.bench.plan.Because;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import java.util.List;

/**
 * The two lengths every angle at a cup turns on.
 *
 * @param hole diameter of the tone hole
 * @param arm hinge axis to cup centre
 */
public record CupGeometry(PlannedNumber hole, PlannedNumber arm) {
    /** As measured, else as the pattern has it, give or take what a horn may differ. */
    public static CupGeometry of(
            Keywork keywork, Cup cup, List<Reading> holes, List<Reading> arms, ShopRules rules, Reasons reasons) {
        ReadNumbers read = new ReadNumbers(rules, reasons);
        ToneHole hole = keywork.holeOf(cup);
        String name = cup.hole();
        return new CupGeometry(
                read.mean("hole " + name, "mean of the hole diameters read", sizes(holes))
                        .orElseGet(() -> pattern(
                                reasons, rules, keywork, "hole " + name, hole.diameterMm(), "hole.from-pattern_mm")),
                read.mean("arm " + name, "mean of the distances read", sizes(arms))
                        .orElseGet(() ->
                                pattern(reasons, rules, keywork, "arm " + name, cup.armMm(), "arm.from-pattern_mm")));
    }

    public static CupGeometry of(Keywork keywork, Cup cup, Measurements measured, ShopRules rules, Reasons reasons) {
        return of(
                keywork,
                cup,
                measured.of(ReadingKind.HOLE, cup.hole()),
                measured.of(ReadingKind.AXIS_TO_CENTRE, cup.id()),
                rules,
                reasons);
    }

    /** A length of nothing is a slip of the pen, not a size. */
    public static List<Reading> sizes(List<Reading> readings) {
        return readings.stream()
                .filter(reading -> reading.observed() instanceof Observed.Amount amount && amount.value() > 0)
                .toList();
    }

    /** Whether the hinge lies outside the hole, without which no pad lands on it. */
    public boolean possible() {
        return arm.value() > hole.value() / 2;
    }

    public Because.Input holeInput() {
        return Because.Input.of("hole diameter", hole);
    }

    public Because.Input armInput() {
        return Because.Input.of("axis to centre", arm);
    }

    /** A value of the pattern that this horn need not share. */
    public static PlannedNumber pattern(
            Reasons reasons, ShopRules rules, Keywork keywork, String what, double value, String differs) {
        PlannedNumber rule = reasons.rule(rules, differs);
        PlannedNumber built = reasons.leaf(
                new Because.FromPattern("pattern " + what, what + " in the pattern " + keywork.id(), keywork.id()),
                value,
                "mm",
                0);
        return reasons.derive(
                what + ", by pattern",
                "as the pattern has it, nobody has measured; a horn may differ by so much",
                "mm",
                in -> in[0] + in[1] - rule.value(),
                Because.Input.of("pattern", built),
                new Because.Input("may differ by", rule.value(), "mm", rule.value(), rule.because()));
    }
}
