package hornwright.bench.seal;

import hornwright.bench.horn.ById;
import hornwright.bench.horn.Place;
import hornwright.bench.plan.Because;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import hornwright.bench.plan.measured.ReadNumbers;
import hornwright.bench.seal.LeakSheet.Found;
import hornwright.bench.sheet.SheetAnswer;
import hornwright.bench.sheet.SheetAsked;
import hornwright.bench.sheet.SheetLine;
import hornwright.bench.sheet.Told;
import hornwright.bench.sheet.Verdict;
import hornwright.bench.sound.LeakEffect;
import hornwright.bench.survey.ReadingKind;
import hornwright.engines.leak.Leak;
import hornwright.engines.leak.RoomAir;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The checklist of every site that can leak, with the total as one hole. It passes a horn only when every site was tried. */
public final class SealSheet {
    /** Line and subject of the total. */
    public static final String TOTAL = "horn";

    /** A leak that is only found, not measured, is taken as a hole of this size to say which notes it weakens. */
    private static final double FOUND_MM = 0.5;

    private static final int NOTES = 3;
    private static final int EXPLAINED = 4;
    private static final double ROOM = 293.15;

    private final SheetAsked ask;
    private final Reasons reasons = new Reasons();
    private final ById<LeakSite> sites;

    private SealSheet(SheetAsked ask) {
        this.ask = ask;
        this.sites = LeakSites.of(ask.keywork());
    }

    public static SheetAnswer of(SheetAsked ask) {
        return new SealSheet(ask).answer();
    }

    private SheetAnswer answer() {
        PlannedNumber total = ask.last(ReadingKind.LEAK, TOTAL, "")
                .flatMap(new ReadNumbers(ask.rules(), reasons)::amount)
                .orElse(null);
        LeakSheet sheet = new LeakSheet(
                sites,
                found(),
                total == null ? null : total.value(),
                ask.rules().value("leak.total_mL_per_s"));
        List<SheetLine> lines = new ArrayList<>();
        lines.add(total == null ? SheetLine.untried(TOTAL) : total(total));
        int leaking = 0;
        for (LeakSite site : sites) {
            Found seen = sheet.found().get(site.id());
            leaking += seen == Found.LEAKS ? 1 : 0;
            lines.add(line(site, seen, leaking <= EXPLAINED));
        }
        return new SheetAnswer(summary(sheet), lines, order(sheet), reasons.table());
    }

    private Map<String, Found> found() {
        Map<String, Found> found = new LinkedHashMap<>();
        for (LeakSite site : sites) {
            String word = ask.word(ReadingKind.LEAK_SITE, site.id(), "");
            for (Found one : Found.values()) {
                if (one.word().equals(word)) {
                    found.put(site.id(), one);
                }
            }
        }
        return found;
    }

    private SheetLine total(PlannedNumber total) {
        PlannedNumber hole = reasons.derive(
                "leak/hole",
                "diameter of a sharp-edged hole with that flow: flow / (%.2f x speed of the jet), air at 20 °C"
                        .formatted(Leak.SHARP_EDGE),
                "mm",
                in -> hole(in[0], in[1]),
                Because.Input.of("total", total),
                Because.Input.of("pressure", reasons.rule(ask.rules(), "leak.pressure_kPa")));
        boolean over = total.value() > ask.rules().value("leak.total_mL_per_s");
        return new SheetLine(
                TOTAL,
                over ? Verdict.ACT : Verdict.MAY_STAY,
                over ? "more than may stay; the total hides where" : "little, but a total hides where: try every site",
                List.of(new Told("total", total), new Told("as one hole", hole)),
                List.of());
    }

    private static double hole(double mLPerS, double kPa) {
        double jet = Math.sqrt(2 * kPa * 1e3 / RoomAir.at(ROOM).density());
        double area = Math.max(0, mLPerS) * 1e-6 / (Leak.SHARP_EDGE * jet);
        return Math.sqrt(4 * area / Math.PI) * 1e3;
    }

    private SheetLine line(LeakSite site, @Nullable Found seen, boolean explained) {
        if (seen == null) {
            return SheetLine.untried(site.id());
        }
        return seen == Found.SEALS
                ? SheetLine.of(site.id(), Verdict.GOOD, "")
                : SheetLine.of(site.id(), Verdict.ACT, "leaks" + (explained ? weakens(site) : ""));
    }

    /** Which notes a small leak there weakens, by the air column as built. */
    private String weakens(LeakSite site) {
        double at = ask.keywork()
                .places()
                .find(site.id())
                .map(Place::at)
                .map(spot -> spot.atMm())
                .orElse(-1.0);
        if (at <= 0 || at >= ask.keywork().tube().lengthMm()) {
            return "";
        }
        String notes = LeakEffect.inWords(ask.keywork(), at, FOUND_MM, NOTES);
        return notes.isEmpty() ? "" : "; a hole of %.1f mm there weakens most %s".formatted(FOUND_MM, notes);
    }

    private static String summary(LeakSheet sheet) {
        String words = sheet.inWords();
        String sentence = words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1) + ".";
        return switch (sheet.verdict()) {
            case SEALS -> "The horn seals: " + words + ".";
            case LEAKS -> sentence;
            case NOT_KNOWN -> sentence + " Nothing is passed before.";
        };
    }

    /** One set-up at a time: all that is tried the same way together. */
    private static List<String> order(LeakSheet sheet) {
        return sheet.nextByWay().entrySet().stream()
                .map(way -> "%s: %s"
                        .formatted(
                                way.getValue().size() == 1
                                        ? way.getValue().getFirst().name()
                                        : way.getValue().size() + " sites",
                                way.getKey().words()))
                .toList();
    }
}
