package hornwright.bench.rim;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.RimKind;
import hornwright.bench.horn.ToneHole;
import hornwright.bench.plan.Because;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import hornwright.bench.plan.measured.CupGeometry;
import hornwright.bench.plan.measured.ReadNumbers;
import hornwright.bench.sheet.SheetAnswer;
import hornwright.bench.sheet.SheetAsked;
import hornwright.bench.sheet.SheetLine;
import hornwright.bench.sheet.Told;
import hornwright.bench.sheet.Verdict;
import hornwright.bench.survey.AgreedUse;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.RimChoice;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** The sheet of the tone holes, from the bell upwards. Bands are common practice and rules of the shop. */
public final class RimSheet {
    /** Point of a rim check: whether a soldered ring holds air. */
    public static final String RING = "ring";

    /** Point of a reading of metal that came off a rim. */
    public static final String OFF = "in all";

    private final SheetAsked ask;
    private final Reasons reasons = new Reasons();
    private final ReadNumbers read;

    private RimSheet(SheetAsked ask) {
        this.ask = ask;
        this.read = new ReadNumbers(ask.rules(), reasons);
    }

    public static SheetAnswer of(SheetAsked ask) {
        RimSheet sheet = new RimSheet(ask);
        List<SheetLine> lines = ask.keywork().cups().stream().map(sheet::line).toList();
        return new SheetAnswer(summary(ask, lines), lines, List.of(), sheet.reasons.table());
    }

    private SheetLine line(Cup cup) {
        ToneHole hole = ask.keywork().holeOf(cup);
        Reading last = ask.measured().of(ReadingKind.RIM_GAP, hole.id()).stream()
                .reduce((first, second) -> second)
                .orElse(null);
        RimChoice choice = RimChoice.of(ask.word(ReadingKind.RIM_CHECK, hole.id(), RimChoice.POINT))
                .orElse(null);
        if (hole.rim() == RimKind.ROLLED && choice == RimChoice.FILE) {
            return SheetLine.of(hole.id(), Verdict.STOP, "never file a rolled rim: it is hollow and opens");
        }
        if (choice == RimChoice.FILE && ask.use() == AgreedUse.DISPLAY) {
            return SheetLine.of(hole.id(), Verdict.STOP, "no metal is taken off a horn kept for display");
        }
        if (ring(hole).equals("leaks")) {
            return SheetLine.of(hole.id(), Verdict.STOP, "the ring leaks: solder it before anything else");
        }
        double off = ask.last(ReadingKind.METAL_OFF, hole.id(), OFF)
                .flatMap(read::amount)
                .map(PlannedNumber::value)
                .orElse(0.0);
        if (off > ask.rules().value("rim.file-most_mm")) {
            return SheetLine.of(
                    hole.id(), Verdict.STOP, "enough metal has come off this rim: float the pad over the rest");
        }
        if (last == null || !(last.observed() instanceof Observed.RimGap gap)) {
            return SheetLine.untried(hole.id());
        }
        PlannedNumber worst = read.part(last, "worst gap", gap.gapMm(), gap.u());
        List<Told> numbers = numbers(cup, hole, worst);
        Verdict verdict = verdict(gap.gapMm(), choice);
        boolean tight = ring(hole).equals("tight");
        return new SheetLine(
                hole.id(),
                verdict,
                says(hole, gap, verdict, choice),
                numbers,
                verdict == Verdict.GOOD
                        ? List.of()
                        : new RimRemedies(ask.rules(), ask.use()).of(hole.rim(), gap.gapMm(), gap.clock(), tight));
    }

    private String ring(ToneHole hole) {
        return ask.word(ReadingKind.RIM_CHECK, hole.id(), RING);
    }

    private Verdict verdict(double gapMm, @Nullable RimChoice choice) {
        if (gapMm <= ask.rules().value("rim.accept_mm")) {
            return Verdict.GOOD;
        }
        boolean left = choice == RimChoice.LEAVE || gapMm < ask.rules().value("rim.act_mm");
        return left ? Verdict.MAY_STAY : Verdict.ACT;
    }

    private String says(ToneHole hole, Observed.RimGap gap, Verdict verdict, @Nullable RimChoice choice) {
        String where = String.format(
                Locale.ROOT, gap.clock() % 1 == 0 ? "low at %.0f o'clock" : "low at %.1f o'clock", gap.clock());
        return switch (verdict) {
            case ACT ->
                where + ": level it before any pad"
                        + (hole.rim() == RimKind.SOLDERED && ring(hole).isEmpty()
                                ? ", the ring leak-tested first"
                                : "");
            case MAY_STAY ->
                choice == RimChoice.LEAVE
                        ? where + ", left by choice: float the pad and write it into the report"
                        : where + ": float the pad over it, level only if it will not seal";
            case GOOD, UNTRIED, STOP -> "";
        };
    }

    private List<Told> numbers(Cup cup, ToneHole hole, PlannedNumber worst) {
        List<Told> numbers = new ArrayList<>();
        numbers.add(new Told("worst gap", worst));
        Because.Input gap = Because.Input.of("worst gap", worst);
        if (worst.value() > ask.rules().value("rim.aim_mm")) {
            CupGeometry geometry = CupGeometry.of(ask.keywork(), cup, ask.measured(), ask.rules(), reasons);
            numbers.add(new Told(
                    "force to close over it",
                    reasons.derive(
                            "rim." + hole.id() + "/force",
                            "pi x hole diameter x stiffness of the seat (%.2f MPa by pattern) x half the worst gap, for a rim low on"
                                            .formatted(cup.seatStiffnessMPa())
                                    + " two opposite sides",
                            "N",
                            in -> Math.PI * in[0] * cup.seatStiffnessMPa() * in[1] / 2,
                            geometry.holeInput(),
                            gap)));
            numbers.add(new Told(
                    "film at the low side",
                    reasons.derive(
                            "rim." + hole.id() + "/film",
                            "thinnest film that still covers + worst gap",
                            "mm",
                            in -> in[0] + in[1],
                            Because.Input.of("thinnest film", reasons.rule(ask.rules(), film(hole))),
                            gap)));
        }
        ask.last(ReadingKind.METAL_OFF, hole.id(), OFF)
                .flatMap(read::amount)
                .filter(off -> off.value() > 0)
                .ifPresent(off -> numbers.add(new Told(
                        "pad stands out more by",
                        reasons.derive(
                                "rim." + hole.id() + "/lower",
                                "the rim sank by what was taken off, so adhesive and pad grow by as much",
                                "mm",
                                in -> in[0],
                                Because.Input.of("taken off", off)))));
        return numbers;
    }

    private static String film(ToneHole hole) {
        return hole.octaveVent() ? "adhesive.small-least_mm" : "adhesive.least_mm";
    }

    private static String summary(SheetAsked ask, List<SheetLine> lines) {
        long tried =
                lines.stream().filter(line -> line.verdict() != Verdict.UNTRIED).count();
        if (tried == 0) {
            return "No rim tried yet. A flat disc, a light and a feeler; note the worst gap and where.";
        }
        List<String> level = names(ask, lines, Verdict.ACT);
        List<String> stop = names(ask, lines, Verdict.STOP);
        String words = "%d of %d rims tried".formatted(tried, lines.size());
        words += level.isEmpty() ? "; none has to be levelled" : "; to level first: " + String.join(", ", level);
        return stop.isEmpty() ? words + "." : words + "; stop at " + String.join(", ", stop) + ".";
    }

    private static List<String> names(SheetAsked ask, List<SheetLine> lines, Verdict verdict) {
        return lines.stream()
                .filter(line -> line.verdict() == verdict)
                .map(line -> ask.keywork().holes().get(line.id()).name().display())
                .toList();
    }
}
