package hornwright.desk.paper;

import hornwright.bench.horn.Keywork;
import hornwright.bench.plan.CutLine;
import hornwright.bench.plan.Plan;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Removal;
import hornwright.bench.seal.LeakSites;
import hornwright.desk.paper.WallPrints.FromSheet;
import hornwright.desk.paper.WallPrints.Leak;
import hornwright.desk.paper.WallPrints.Piece;
import hornwright.desk.paper.WallPrints.Turn;
import hornwright.desk.units.Shown;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The plan in the words of the wall prints. */
public final class WallWords {
    private final Keywork keywork;
    private final Plan plan;
    private final RodNames rods;

    private WallWords(Keywork keywork, Plan plan) {
        this.keywork = keywork;
        this.plan = plan;
        this.rods = new RodNames(keywork);
    }

    public static WallPrints of(Keywork keywork, Plan plan, SheetHead head) {
        WallWords words = new WallWords(keywork, plan);
        return new WallPrints(
                head.title(), head.line(), words.removal(), words.cuts(), words.leaks(), LeakSites.cautions());
    }

    private List<Turn> removal() {
        return plan.removal().stream()
                .sorted(Comparator.comparingInt(Removal::turn))
                .map(removal -> new Turn(
                        removal.turn(),
                        rods.of(removal.rod()),
                        removal.keys().stream()
                                .map(key -> keywork.keys().get(key).name().display())
                                .collect(Collectors.joining(", ")),
                        removal.after().stream().map(rods::of).collect(Collectors.joining(", "))))
                .toList();
    }

    /** Thin sheets first within a material; what no stocked sheet gives comes last, said as such. */
    private List<FromSheet> cuts() {
        Map<String, List<Piece>> bySheet = new TreeMap<>();
        for (CutLine cut : plan.cuts()) {
            String sheet = cut.material() + ", "
                    + (cut.sheetMm() == null
                            ? "no sheet on the shelf"
                            : Shown.value(cut.sheetMm().value(), 0) + " mm sheet");
            bySheet.computeIfAbsent(sheet, none -> new ArrayList<>())
                    .add(new Piece(nameOf(cut.place()), cut.form().word(), mm(cut.cutMm()), cut.method()));
        }
        return bySheet.entrySet().stream()
                .map(entry -> new FromSheet(entry.getKey(), entry.getValue()))
                .toList();
    }

    private static String mm(@Nullable PlannedNumber number) {
        return number == null ? "" : Shown.of(number.value(), number.u()) + " mm";
    }

    private String nameOf(String place) {
        return keywork.places().get(place).display();
    }

    private List<Leak> leaks() {
        return LeakSites.of(keywork).stream()
                .map(site -> new Leak(site.name(), site.way().words()))
                .toList();
    }
}
