package hornwright.bench.neck;

import hornwright.bench.care.Hazard;
import hornwright.bench.horn.HornPart;
import hornwright.bench.horn.TubePart;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import hornwright.bench.sheet.Remedy;
import hornwright.bench.sheet.SheetAnswer;
import hornwright.bench.sheet.SheetAsked;
import hornwright.bench.sheet.SheetLine;
import hornwright.bench.sheet.Told;
import hornwright.bench.sheet.Verdict;
import hornwright.bench.sound.LeakEffect;
import hornwright.bench.survey.NeckPoint;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.Treatment.Reversible;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** The sheet of neck and tenon. Bands are bench judgement and rules of the shop. */
public final class NeckSheet {
    public static final String TENON = "tenon";
    public static final String CORK = "cork";

    private static final int NOTES = 3;

    /** A leak that is only found, not measured, is taken as a hole of this size. */
    private static final double FOUND_MM = 0.5;

    /** A difference of readings in hundredths is no exact hundredth in binary. */
    private static final double ROUNDING = 1e-9;

    private final SheetAsked ask;
    private final Reasons reasons = new Reasons();
    private final Tenon tenon;

    private NeckSheet(SheetAsked ask) {
        this.ask = ask;
        this.tenon = new Tenon(ask, reasons);
    }

    public static SheetAnswer of(SheetAsked ask) {
        NeckSheet sheet = new NeckSheet(ask);
        List<SheetLine> lines = new ArrayList<>();
        lines.add(sheet.tenon());
        Stream.of(Check.values()).map(sheet::check).forEach(lines::add);
        lines.add(sheet.cork());
        return new SheetAnswer(summary(lines), lines, order(lines), sheet.reasons.table());
    }

    private SheetLine tenon() {
        Optional<PlannedNumber> round = tenon.outOfRound();
        Optional<PlannedNumber> taper = tenon.taper();
        Optional<PlannedNumber> gap = tenon.gap();
        List<Told> numbers = new ArrayList<>();
        tell(numbers, "out of round", round);
        tell(numbers, "taper", taper);
        tell(numbers, "loose by", gap);
        tell(numbers, "area of the gap", tenon.area());
        tell(numbers, "as one hole", tenon.hole());
        if (numbers.isEmpty()) {
            return SheetLine.untried(TENON);
        }
        List<String> wrong = new ArrayList<>();
        if (over(round, "neck.round_mm")) {
            wrong.add("out of round");
        }
        if (over(taper, "neck.taper_mm")) {
            wrong.add("tapered");
        }
        if (over(gap, "neck.loose_mm")) {
            wrong.add("loose" + hurts());
        }
        if (gap.isPresent() && gap.get().value() <= 0) {
            return new SheetLine(
                    TENON,
                    Verdict.STOP,
                    "the tenon is larger than the receiver: measure again, force nothing",
                    numbers,
                    List.of());
        }
        return wrong.isEmpty()
                ? new SheetLine(TENON, Verdict.GOOD, "", numbers, List.of())
                : new SheetLine(TENON, Verdict.ACT, String.join(", ", wrong), numbers, ways());
    }

    /** The notes a leak of that size at the receiver hurts most, in words. */
    private String hurts() {
        Optional<PlannedNumber> hole = tenon.hole();
        if (hole.isEmpty()) {
            return "";
        }
        String notes = LeakEffect.inWords(ask.keywork(), receiver(), hole.get().value(), NOTES);
        return notes.isEmpty() ? "" : "; if nothing closes it, it weakens most " + notes;
    }

    private static List<Remedy> ways() {
        return List.of(
                Remedy.of(
                        "Make it round on a mandrel of its own size",
                        "0.03 mm out of round may stay",
                        5,
                        15,
                        Reversible.PARTLY,
                        Hazard.TENON),
                Remedy.of(
                        "Expand it evenly, a hundredth at a time, and try the neck each time",
                        "it slides without rock and seals with the screw off",
                        10,
                        30,
                        Reversible.NO,
                        Hazard.TENON),
                Remedy.of(
                        "Lap the last hundredth together with the receiver, clean off every grain",
                        "not on plated tenons",
                        10,
                        20,
                        Reversible.NO,
                        Hazard.TENON,
                        Hazard.DUST));
    }

    private SheetLine check(Check check) {
        String said = ask.word(ReadingKind.NECK_CHECK, Tenon.NECK, check.point());
        return SheetLine.of(check.point(), check.verdict(said), check.says(said) + weakens(check, said));
    }

    /** Which notes a small leak at the receiver or at the pip takes most from, by the air column as built. */
    private String weakens(Check check, String said) {
        boolean air = check == Check.SEALS || check == Check.PIP;
        if (!air || check.verdict(said) != Verdict.ACT) {
            return "";
        }
        OptionalDouble at = check == Check.SEALS ? OptionalDouble.of(receiver()) : pip();
        String notes = at.isEmpty() ? "" : LeakEffect.inWords(ask.keywork(), at.getAsDouble(), FOUND_MM, NOTES);
        return notes.isEmpty() ? "" : "; a hole of %.1f mm there weakens most %s".formatted(FOUND_MM, notes);
    }

    private double receiver() {
        return ask.keywork().tube().parts().stream()
                .filter(part -> part.part() == HornPart.NECK)
                .mapToDouble(TubePart::toMm)
                .findFirst()
                .orElse(0);
    }

    private OptionalDouble pip() {
        return ask.keywork().holes().stream()
                .filter(hole -> hole.octaveVent()
                        && ask.keywork().tube().partAt(hole.at().atMm()) == HornPart.NECK)
                .mapToDouble(hole -> hole.at().atMm())
                .findFirst();
    }

    private SheetLine cork() {
        Cork cork = new Cork(tenon, reasons, ask.rules());
        List<Told> numbers = new ArrayList<>();
        tell(numbers, "at the tip", cork.atTheTip());
        tell(numbers, "at the back", cork.atTheBack());
        tell(numbers, "cut from a sheet of", cork.sheet());
        tell(numbers, "strip as long as", tenon.at(NeckPoint.CORK_LENGTH));
        if (cork.sheet().isEmpty()) {
            return numbers.isEmpty()
                    ? SheetLine.untried(CORK)
                    : new SheetLine(CORK, Verdict.UNTRIED, "", numbers, List.of());
        }
        return new SheetLine(
                CORK,
                Verdict.GOOD,
                "glue it on full, sand it to the mouthpiece, thinner towards the back as the neck grows",
                numbers,
                List.of());
    }

    private boolean over(Optional<PlannedNumber> number, String rule) {
        return number.isPresent() && number.get().value() > ask.rules().value(rule) + ROUNDING;
    }

    private static void tell(List<Told> numbers, String label, Optional<PlannedNumber> number) {
        number.ifPresent(value -> numbers.add(new Told(label, value)));
    }

    /** The neck is straight before it is round, round before it is expanded, soldered before it is tried for air. */
    private static List<String> order(List<SheetLine> lines) {
        List<String> wanted = List.of(
                Check.PULL_DOWN.point(),
                Check.BRACE.point(),
                Check.PIP.point(),
                TENON,
                Check.SLIDES.point(),
                Check.CLAMPS.point(),
                Check.SEALS.point());
        List<String> order = new ArrayList<>();
        for (String id : wanted) {
            lines.stream()
                    .filter(line -> line.id().equals(id) && line.verdict() == Verdict.ACT)
                    .map(line -> words(id) + ": " + line.says())
                    .forEach(order::add);
        }
        if (!order.isEmpty()) {
            order.add("Then try it for air again, and set the octave ring last");
        }
        return order;
    }

    private static String words(String id) {
        return Stream.of(Check.values())
                .filter(check -> check.point().equals(id))
                .map(Check::label)
                .findFirst()
                .orElse("Tenon");
    }

    private static String summary(List<SheetLine> lines) {
        long tried =
                lines.stream().filter(line -> line.verdict() != Verdict.UNTRIED).count();
        long wrong = lines.stream()
                .filter(line -> line.verdict() == Verdict.ACT || line.verdict() == Verdict.STOP)
                .count();
        if (tried == 0) {
            return "Nothing tried yet. The neck comes before every pad: its leak hides behind all of them.";
        }
        String said = "%d of %d tried; ".formatted(tried, lines.size());
        return said + (wrong == 0 ? "nothing to do." : wrong == 1 ? "one thing to do." : wrong + " things to do.");
    }
}
