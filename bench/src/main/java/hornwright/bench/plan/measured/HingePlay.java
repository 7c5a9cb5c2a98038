package hornwright.bench.plan.measured;

import hornwright.bench.horn.HingeTube;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Keywork;
import hornwright.bench.plan.Because;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.PlayGrade;
import hornwright.bench.survey.Reading;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** How a key sits on its rod: the clearance as measured, else as the felt grade usually means, and the tube it is over. */
public final class HingePlay {
    /** Point of a hinge reading of the clearance between rod and tube. */
    public static final String ACROSS = "across the rod";
    /** Point of a hinge reading of the play along the rod. */
    public static final String ALONG = "along the rod";
    /** Point of a hinge reading of how much tube a swedging tool can get at. */
    public static final String CLOSABLE = "tube that can be closed";

    private HingePlay() {}

    /** Clearance between rod and tube; empty when nobody has felt or measured it. */
    public static Optional<PlannedNumber> across(
            List<Reading> hinges, List<Reading> plays, ShopRules rules, Reasons reasons) {
        return measured(hinges, ACROSS, rules, reasons)
                .or(() -> felt(plays)
                        .map(seen -> grade(seen.reading(), seen.play().radial(), reasons)));
    }

    /** Play along the rod; empty when nobody has felt or measured it. */
    public static Optional<PlannedNumber> along(
            List<Reading> hinges, List<Reading> plays, ShopRules rules, Reasons reasons) {
        return measured(hinges, ALONG, rules, reasons)
                .or(() -> felt(plays)
                        .map(seen -> grade(seen.reading(), seen.play().end(), reasons)));
    }

    /** How much of the tube can be closed; empty when nobody has measured it. */
    public static Optional<PlannedNumber> closable(List<Reading> hinges, ShopRules rules, Reasons reasons) {
        return measured(hinges, CLOSABLE, rules, reasons);
    }

    /** The tube of a key; its pattern, else what an unknown tube usually has. */
    public static PlannedNumber tube(Keywork keywork, Key key, ShopRules rules, Reasons reasons) {
        HingeTube tube = key.tube();
        return tube.lengthMm() > 0
                ? CupGeometry.pattern(
                        reasons, rules, keywork, "tube length " + key.id(), tube.lengthMm(), "arm.from-pattern_mm")
                : reasons.rule(rules, "hinge.tube-length_mm");
    }

    private record Felt(Reading reading, Observed.Play play) {}

    private static Optional<Felt> felt(List<Reading> plays) {
        return plays.stream()
                .reduce((first, second) -> second)
                .flatMap(reading -> reading.observed() instanceof Observed.Play play
                        ? Optional.of(new Felt(reading, play))
                        : Optional.empty());
    }

    private static Optional<PlannedNumber> measured(
            List<Reading> hinges, String point, ShopRules rules, Reasons reasons) {
        return hinges.stream()
                .filter(reading -> reading.point().equals(point))
                .reduce((first, second) -> second)
                .flatMap(new ReadNumbers(rules, reasons)::amount);
    }

    private static PlannedNumber grade(Reading reading, PlayGrade grade, Reasons reasons) {
        String says = String.format(
                Locale.ROOT,
                "play of %s felt as \"%s\", usually %.2f to %.2f mm (common practice)",
                reading.of(),
                grade.word(),
                grade.fromMm(),
                grade.toMm());
        String id = "reading " + reading.id() + ", " + grade.word();
        Because.Leaf leaf = new Because.FromReading(id, says, reading.id(), reading.instrument());
        double half = (grade.toMm() - grade.fromMm()) / 2;
        return reasons.leaf(leaf, grade.fromMm() + half, "mm", half / Math.sqrt(3));
    }
}
