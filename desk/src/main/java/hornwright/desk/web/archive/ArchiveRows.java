package hornwright.desk.web.archive;

import hornwright.bench.archive.Archive;
import hornwright.bench.archive.Evidence;
import hornwright.bench.archive.Resolution;
import hornwright.bench.archive.SearchLog;
import hornwright.bench.archive.Stance;
import hornwright.bench.archive.Statement;
import hornwright.bench.archive.Witness;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Voice;
import hornwright.desk.use.Keyworks;
import hornwright.desk.use.ShowArchive;
import hornwright.desk.web.view.PlacePanel;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Writes what the archive rests on. */
public final class ArchiveRows {
    private final Archive archive;
    private final Map<String, String> names = new HashMap<>();

    public ArchiveRows(Archive archive) {
        this.archive = archive;
        for (Voice voice : Voice.values()) {
            Keyworks.ofVoice(voice)
                    .map(Keywork::places)
                    .ifPresent(places -> places.forEach(place -> names.putIfAbsent(place.id(), place.display())));
        }
    }

    public String lead() {
        return "%d horns, %d looks, %d statements of papers and people. Tap a horn to say what you see on it; what the factory is thought to have used is kept off that page."
                .formatted(
                        archive.witnesses().size(),
                        archive.observations().size(),
                        archive.statements().size());
    }

    public List<ArchivePage.Horn> horns() {
        Map<String, Long> looks = archive.observations().stream()
                .collect(Collectors.groupingBy(look -> look.witness(), Collectors.counting()));
        return archive.witnesses().stream()
                .sorted(Comparator.comparingLong(Witness::serial).thenComparing(Witness::id))
                .map(witness -> new ArchivePage.Horn(
                        "" + witness.serial(),
                        witness.voice().word(),
                        "/archive/witness/" + witness.id(),
                        witness.built() == null ? "" : witness.built().inWords(),
                        witness.integrity().word(),
                        looks.getOrDefault(witness.id(), 0L) + " places",
                        witness.isMixed() ? "numbers differ" : ""))
                .toList();
    }

    public List<ArchivePage.Contest> contests(List<ShowArchive.Contest> contests) {
        return contests.stream()
                .map(one -> new ArchivePage.Contest(
                        one.witness().voice().word() + " " + one.witness().serial(),
                        "shows %s where %s is likeliest".formatted(one.shows(), one.likeliest()),
                        places(one.places()),
                        String.join(",", one.evidence()),
                        "/archive/witness/" + one.witness().id()))
                .toList();
    }

    public List<ArchivePage.Aside> asides() {
        return archive.resolutions().stream()
                .map(aside -> new ArchivePage.Aside(words(aside.evidence()), reason(aside)))
                .toList();
    }

    public List<ArchivePage.Told> told() {
        return new HeardRows(archive, this::words).all();
    }

    private String words(String evidence) {
        return archive.observations().stream()
                .filter(look -> look.id().equals(evidence))
                .findFirst()
                .map(look -> "%s at the %s of %s"
                        .formatted(look.material(), names.getOrDefault(look.place(), look.place()), look.witness()))
                .orElse(evidence);
    }

    private static String reason(Resolution aside) {
        return "%s (%s, %s)".formatted(aside.reason(), aside.who(), aside.when().inWords());
    }

    /** Statements of one origin about one material, a line each; a second one of the same origin counts no more. */
    public List<ArchivePage.Said> said() {
        record Line(
                String origin,
                String material,
                Stance stance,
                String serials,
                String cited,
                String kind,
                String hand) {}
        Map<Line, Set<String>> lines = new LinkedHashMap<>();
        for (Statement one : archive.statements()) {
            Evidence e = one.evidence();
            lines.computeIfAbsent(
                            new Line(
                                    e.origin().id(),
                                    one.material(),
                                    e.stance(),
                                    e.serials().inWords(),
                                    e.citation() == null ? "no citation" : e.citation(),
                                    e.kind().word(),
                                    e.hand().word()),
                            none -> new HashSet<>())
                    .add(one.place());
        }
        Set<String> told = new HashSet<>();
        return lines.entrySet().stream()
                .map(line -> new ArchivePage.Said(
                        line.getKey().kind() + ", " + line.getKey().hand(),
                        (line.getKey().stance() == Stance.CONTRADICTS ? "not " : "")
                                + line.getKey().material() + ": "
                                + places(line.getValue().stream().sorted().toList()),
                        line.getKey().serials(),
                        line.getKey().origin(),
                        line.getKey().cited(),
                        !told.add(line.getKey().origin() + line.getKey().material())))
                .toList();
    }

    public List<ArchivePage.Searched> searches() {
        Map<SearchLog, List<String>> logs = new LinkedHashMap<>();
        new TreeMap<>(archive.searches())
                .forEach((place, log) ->
                        logs.computeIfAbsent(log, none -> new ArrayList<>()).add(place));
        return logs.entrySet().stream()
                .map(log -> new ArchivePage.Searched(
                        log.getKey().where(),
                        log.getKey().terms(),
                        log.getKey().when().inWords(),
                        log.getValue().size() + " places"))
                .toList();
    }

    private String places(List<String> ids) {
        return ids.stream().map(id -> names.getOrDefault(id, id)).collect(Collectors.joining(", "));
    }

    /** The strokes of a voice as choices: "Lower stack: foot". */
    public static List<PlacePanel.Option> strokes(Keywork keywork) {
        return WitnessRows.strokes(keywork).entrySet().stream()
                .map(stroke -> new PlacePanel.Option(
                        stroke.getKey(),
                        WitnessRows.title(stroke.getKey()
                                        .substring(0, stroke.getKey().indexOf('.'))) + ": "
                                + stroke.getValue().getFirst().kind().spoken(),
                        false))
                .toList();
    }
}
