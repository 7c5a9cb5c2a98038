package hornwright.desk.web.archive;

import hornwright.bench.archive.AsBuiltAt;
import hornwright.bench.archive.Kin;
import hornwright.bench.archive.NextLook;
import hornwright.bench.horn.KeyGroup;
import hornwright.bench.horn.Place;
import hornwright.bench.plan.origin.OriginLine;
import hornwright.bench.plan.origin.OriginalityStatement;
import hornwright.desk.drawing.RulerWords;
import hornwright.desk.use.ShowAsBuilt;
import hornwright.desk.web.view.GradeState;
import hornwright.desk.web.view.Next;
import hornwright.desk.web.view.OnBench;
import hornwright.desk.web.view.State;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Writes the as-built page from what the archive says. */
public final class AsBuiltRows {
    private static final int LOOKS = 3;
    private static final String TUBE = "Tube and neck";

    private final ShowAsBuilt.Sheet sheet;
    private final Function<String, String> evidence;

    public AsBuiltRows(ShowAsBuilt.Sheet sheet, Function<String, String> evidence) {
        this.sheet = sheet;
        this.evidence = evidence;
    }

    public String title() {
        return "What left the factory near " + sheet.serial();
    }

    public String lead() {
        return "%d horns were looked at. A band is as thick in a material as that material is likely there; the blue line is this horn."
                .formatted(sheet.witnesses());
    }

    public Years.Answer year() {
        return YearRows.answer(sheet.year());
    }

    /** Where one more look would help most. */
    public List<AsBuiltPage.Look> looks() {
        return sheet.next().stream().limit(LOOKS).map(this::look).toList();
    }

    private AsBuiltPage.Look look(NextLook next) {
        return new AsBuiltPage.Look(
                words(next),
                String.format(
                        Locale.ROOT,
                        "doubt %.2f bit now, %.2f to be expected after",
                        next.doubtNow(),
                        next.doubtAfter()),
                evidence.apply(next.place()));
    }

    /** "the low D foot of an original horn between 40912 and 41629". */
    String words(NextLook next) {
        String name = sheet.keywork().places().get(next.place()).display();
        return "the %s of an original horn %s"
                .formatted(
                        name,
                        next.serials().isOne()
                                ? "near " + next.serials().from()
                                : "between %d and %d"
                                        .formatted(
                                                next.serials().from(),
                                                next.serials().to()));
    }

    /** The one line at the head of the page. */
    public Next next(String survey) {
        long gaps = sheet.built().values().stream().filter(AsBuiltAt::isGap).count();
        String missing = gaps == 0
                ? "nothing; every place was looked at on some horn."
                : "%d of %d places nobody has looked at."
                        .formatted(gaps, sheet.built().size());
        if (sheet.next().isEmpty()) {
            return new Next(missing, "", "", "", "");
        }
        String next = "look at " + words(sheet.next().getFirst()) + ".";
        return new Next(missing, next, OnBench.capital(next), survey, survey.isEmpty() ? "" : "Add what you see");
    }

    public List<AsBuiltPage.Group> groups() {
        Map<String, List<AsBuiltPage.Line>> groups = new LinkedHashMap<>();
        for (KeyGroup group : KeyGroup.values()) {
            groups.put(group.title(), new ArrayList<>());
        }
        groups.put(TUBE, new ArrayList<>());
        for (Place place : sheet.keywork().places()) {
            String title = sheet.keywork().groupOf(place).map(KeyGroup::title).orElse(TUBE);
            Objects.requireNonNull(groups.get(title)).add(line(place));
        }
        return groups.entrySet().stream()
                .filter(group -> !group.getValue().isEmpty())
                .map(group -> group(group.getKey(), group.getValue()))
                .toList();
    }

    private static AsBuiltPage.Group group(String title, List<AsBuiltPage.Line> lines) {
        Map<Boolean, List<AsBuiltPage.Line>> known = lines.stream()
                .collect(Collectors.partitioningBy(line -> !line.material().isEmpty()));
        List<AsBuiltPage.Line> looked = known.getOrDefault(true, List.of());
        List<AsBuiltPage.Line> gaps = known.getOrDefault(false, List.of());
        Map<String, List<String>> kinds = gaps.stream()
                .filter(line -> !line.kind().isEmpty())
                .collect(Collectors.groupingBy(
                        AsBuiltPage.Line::kind,
                        LinkedHashMap::new,
                        Collectors.mapping(AsBuiltPage.Line::name, Collectors.toList())));
        return new AsBuiltPage.Group(
                title,
                "%d of %d places looked at".formatted(looked.size(), lines.size()),
                looked,
                gaps,
                kinds.entrySet().stream()
                        .map(kind -> new AsBuiltPage.Kindred(String.join(", ", kind.getValue()), kind.getKey()))
                        .toList());
    }

    private AsBuiltPage.Line line(Place place) {
        AsBuiltAt built = Objects.requireNonNull(sheet.built().get(place.id()));
        return new AsBuiltPage.Line(
                OnBench.capital(place.display()),
                evidence.apply(place.id()),
                Objects.requireNonNullElse(built.material(), ""),
                Objects.requireNonNullElse(built.colour(), ""),
                RulerWords.thickness(built.thicknessAtLeastMm()),
                RulerWords.made(built.shape(), built.cut(), built.adhesive()),
                GradeState.of(built.grade()),
                kind(place));
    }

    private String kind(Place place) {
        Kin kin = sheet.kin().get(place.id());
        return kin == null ? "" : kin.looks() == 0 ? kin.ofGap() : kin.inWords();
    }

    /** How original the horn on the bench is; null when nobody looked. */
    public static AsBuiltPage.@Nullable Origin origin(OnBench bench) {
        OriginalityStatement statement = OriginalityStatement.of(bench.keywork(), bench.plan());
        if (statement.isEmpty()) {
            return null;
        }
        int left = statement.byGroupOnly();
        return new AsBuiltPage.Origin(
                statement.opening(),
                statement.stamps(),
                statement.lines().stream().map(AsBuiltRows::said).toList(),
                statement.forOwner(),
                left == 0 ? "" : left + " places were passed over with their group; of these nothing is said.");
    }

    private static AsBuiltPage.Said said(OriginLine line) {
        State state = switch (line.verdict()) {
            case BORNE_OUT -> new State("done", "borne out");
            case JUDGED -> new State("planned", "judged here");
            case AGREES -> new State("planned", "agrees");
            case CONTESTED -> new State("contested", "disputed");
            case DOUBTED -> new State("contested", "doubted");
            case DIFFERS -> new State("stale", "differs");
            case LATER -> new State("stale", "later");
            case UNTOLD -> new State("missing", "cannot be told");
            case MISSING -> new State("missing", "missing");
        };
        return new AsBuiltPage.Said(line.what(), OnBench.capital(line.words()) + ".", state);
    }
}
