package hornwright.desk.web.archive;

import hornwright.bench.archive.Archive;
import hornwright.bench.archive.AsBuiltAt;
import hornwright.bench.archive.Item;
import hornwright.bench.archive.Kin;
import hornwright.bench.archive.Observation;
import hornwright.bench.archive.SearchLog;
import hornwright.bench.horn.Place;
import hornwright.desk.drawing.RulerWords;
import hornwright.desk.use.ShowAsBuilt;
import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.GradeState;
import hornwright.desk.web.view.OnBench;
import hornwright.desk.web.view.Written;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Writes what is known of one place. */
public final class EvidenceRows {
    private static final String CHOSEN = " (chosen on invented archives)";

    private final ShowAsBuilt.Sheet sheet;
    private final Archive archive;
    private final Place place;
    private final AsBuiltAt built;

    public EvidenceRows(ShowAsBuilt.Sheet sheet, Archive archive, Place place) {
        this.sheet = sheet;
        this.archive = archive;
        this.place = place;
        this.built = Objects.requireNonNull(sheet.built().get(place.id()));
    }

    public EvidencePage page(Frame frame, String back) {
        return new EvidencePage(
                frame,
                OnBench.capital(place.display()) + " at " + sheet.serial(),
                back,
                new RulerRows(sheet, id -> "#items").telling(place.id()),
                facts(),
                GradeState.of(built.grade()),
                built.grading().supporting() + " for, " + built.grading().contradicting() + " against, from "
                        + built.grading().groups()
                        + (built.grading().groups() == 1 ? " origin." : " independent origins."),
                built.grading().reasons(),
                chance(),
                terms(),
                archive.items(sheet.voice(), place.id(), sheet.serial()).stream()
                        .map(this::item)
                        .toList(),
                search(archive.search(place.id())));
    }

    private List<EvidencePage.Fact> facts() {
        List<EvidencePage.Fact> facts = new ArrayList<>();
        facts.add(new EvidencePage.Fact("Material", Objects.requireNonNullElse(built.material(), "not known")));
        add(facts, "Colour", built.colour());
        add(
                facts,
                "Thickness",
                built.thicknessAtLeastMm() == null
                        ? null
                        : RulerWords.thickness(built.thicknessAtLeastMm()) + "; it has packed since");
        add(facts, "Stuck with", built.adhesive());
        add(facts, "Shape", built.shape() == null ? null : built.shape().word());
        add(facts, "Cut", built.cut() == null ? null : built.cut().word().replace('-', ' '));
        if (built.era() != null) {
            facts.add(new EvidencePage.Fact(
                    "Rests on",
                    "horns " + built.era().inWords() + "; " + built.examined().inWords()));
            facts.add(new EvidencePage.Fact("This serial", RulerWords.ground(built)));
        }
        Kin kin = sheet.kin().get(place.id());
        if (kin != null) {
            facts.add(new EvidencePage.Fact("Its kind", RulerWords.capital(kin.inWords())));
        }
        if (built.habit() != null) {
            facts.add(new EvidencePage.Fact(
                    "Habit", RulerWords.capital(built.habit().inWords())));
        }
        AsBuiltAt.ChangeOver change = built.changeOver();
        if (change != null) {
            facts.add(new EvidencePage.Fact(
                    "Change-over",
                    "%s to %s, somewhere in %s"
                            .formatted(
                                    change.before(),
                                    change.after(),
                                    change.between().inWords())));
        }
        return facts;
    }

    private static void add(List<EvidencePage.Fact> facts, String name, @Nullable String words) {
        if (words != null) {
            facts.add(new EvidencePage.Fact(name, words));
        }
    }

    private String chance() {
        if (built.probabilities().isEmpty()) {
            return "No horn was looked at here, so nothing is said of how likely it is.";
        }
        return built.probabilities().entrySet().stream()
                .sorted(Map.Entry.<String, Double>comparingByValue().reversed())
                .map(entry -> "%s %s".formatted(entry.getKey(), String.format(Locale.ROOT, "%.3f", entry.getValue())))
                .collect(Collectors.joining(", ", "A look at this serial would show ", "."));
    }

    private List<EvidencePage.Fact> terms() {
        if (built.probabilities().isEmpty()) {
            return List.of();
        }
        return List.of(
                new EvidencePage.Fact(
                        "each look counts", "0, 0.25, 0.75 or 1, by its strength 0 to 3 (bench judgement)"),
                new EvidencePage.Fact(
                        "a look of strength 3 deceives",
                        Archive.ASSUMED.errors().stream()
                                        .map(EvidenceRows::inHundred)
                                        .collect(Collectors.joining(", "))
                                + " times in 100, whichever the looks bear out: an old repair, a slip" + CHOSEN),
                new EvidencePage.Fact("a change after any one horn", percent(Archive.ASSUMED.change()) + CHOSEN),
                new EvidencePage.Fact("a works mixes materials on purpose", percent(Archive.ASSUMED.mixing()) + CHOSEN),
                new EvidencePage.Fact("rule", "every course the works may have taken, weighed exactly; Rabiner 1989"));
    }

    private static String inHundred(double chance) {
        return Written.plain(Math.rint(1000 * chance) / 10);
    }

    private static String percent(double chance) {
        return inHundred(chance) + " times in 100";
    }

    private EvidencePage.Item item(Item item) {
        Observation seen = item.seen();
        boolean other = built.material() != null && !item.material().equals(built.material());
        return new EvidencePage.Item(
                item.id(),
                item.serials().inWords(),
                seen == null ? "" : seen.witness(),
                item.against() ? "not " + item.material() : saw(item.material(), seen),
                how(item),
                item.strength().value() + " of 3",
                item.strength().reasons(),
                item.evidence().citation() == null
                        ? "no citation"
                        : item.evidence().citation(),
                item.evidence().file() == null
                        ? ""
                        : "/photo/" + item.evidence().file(),
                other || item.against(),
                item.resolved() == null
                        ? ""
                        : "Set aside: %s (%s, %s)"
                                .formatted(
                                        item.resolved().reason(),
                                        item.resolved().who(),
                                        item.resolved().when().inWords()));
    }

    private static String saw(String material, @Nullable Observation seen) {
        if (seen == null) {
            return material;
        }
        return Stream.of(
                        material,
                        Objects.requireNonNullElse(seen.colour(), ""),
                        RulerWords.thickness(seen.thicknessAtLeastMm()),
                        RulerWords.made(seen.shape(), seen.cut(), seen.adhesive()))
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining(", "));
    }

    private static String how(Item item) {
        return "%s, %s, from %s"
                .formatted(
                        item.evidence().kind().word(),
                        item.evidence().hand().word(),
                        item.evidence().origin().id());
    }

    private static String search(@Nullable SearchLog log) {
        return log == null
                ? "Nobody has written down a search for more. Without one nothing is established, and not finding says nothing."
                : "Looked for %s in %s, %s."
                        .formatted(log.terms(), log.where(), log.when().inWords());
    }
}
