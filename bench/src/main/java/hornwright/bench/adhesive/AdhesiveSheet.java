package hornwright.bench.adhesive;

import hornwright.bench.care.AdhesiveRemoval;
import hornwright.bench.care.AdhesiveRemoval.Adhesive;
import hornwright.bench.care.AdhesiveRemoval.Finish;
import hornwright.bench.horn.KeyGroup;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Owner;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.PlaceKind;
import hornwright.bench.plan.Reasons;
import hornwright.bench.sheet.Remedy;
import hornwright.bench.sheet.SheetAnswer;
import hornwright.bench.sheet.SheetAsked;
import hornwright.bench.sheet.SheetLine;
import hornwright.bench.sheet.Verdict;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.Treatment.Reversible;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Adhesive by adhesive, finish by finish, part by part. */
public final class AdhesiveSheet {
    /** Subject and line of the finish of the keys. */
    public static final String KEYS = "keys";

    public static final String FINISH = "finish";

    private final SheetAsked ask;

    private AdhesiveSheet(SheetAsked ask) {
        this.ask = ask;
    }

    /**
     * All adhesive of one sort in one group.
     *
     * @param place the place it is kept under
     * @param underPads whether it lies in cups, else under cork and felt
     */
    public record Batch(KeyGroup group, boolean underPads, String place, int places) {}

    /** The batches of a horn: under pads and under cork and felt, group by group. */
    public static List<Batch> batches(Keywork keywork) {
        List<Batch> batches = new ArrayList<>();
        for (KeyGroup group : KeyGroup.values()) {
            for (boolean underPads : new boolean[] {true, false}) {
                List<Place> places = placesOf(keywork, group, underPads);
                if (!places.isEmpty()) {
                    batches.add(new Batch(group, underPads, places.getFirst().id(), places.size()));
                }
            }
        }
        return batches;
    }

    private static List<Place> placesOf(Keywork keywork, KeyGroup group, boolean underPads) {
        return keywork.places()
                .where(place -> place.kind() == PlaceKind.ADHESIVE
                        && isUnderPad(place) == underPads
                        && keywork.groupOf(place).filter(of -> of == group).isPresent());
    }

    private static boolean isUnderPad(Place place) {
        return place.beneath() == null && place.belongsTo() instanceof Owner.OfCup;
    }

    public static SheetAnswer of(SheetAsked ask) {
        AdhesiveSheet sheet = new AdhesiveSheet(ask);
        List<SheetLine> lines = new ArrayList<>();
        lines.add(sheet.finishLine());
        batches(ask.keywork()).stream().map(sheet::line).forEach(lines::add);
        long found = lines.stream()
                .skip(1)
                .filter(line -> line.verdict() != Verdict.UNTRIED)
                .count();
        String summary = found == 0
                ? "Nothing said yet. Look under one pad and one cork of each group."
                : "%d of %d groups known.".formatted(found, lines.size() - 1);
        return new SheetAnswer(summary, lines, List.of(), new Reasons().table());
    }

    /** The finish of the keys as it was said; empty when nobody did. */
    public static Optional<Finish> finishOf(SheetAsked ask) {
        return new AdhesiveSheet(ask).finish();
    }

    private SheetLine finishLine() {
        return finish().isPresent()
                ? SheetLine.of(FINISH, Verdict.GOOD, "")
                : SheetLine.of(
                        FINISH, Verdict.UNTRIED, "not said: every way below is the one for the tenderest finish");
    }

    private SheetLine line(Batch batch) {
        Map<Adhesive, Long> found = found(batch);
        if (found.isEmpty()) {
            return SheetLine.untried(batch.place());
        }
        boolean warm = mayBeWarmed(batch);
        List<String> says = new ArrayList<>();
        if (said(batch).isEmpty()) {
            says.add("found by the survey: " + inWords(found));
        }
        if (!warm) {
            says.add("not to be warmed: pearls, celluloid or soft solder are close by");
        }
        List<Remedy> ways = found.keySet().stream()
                .map(adhesive -> way(adhesive, warm, found.size() > 1))
                .toList();
        return new SheetLine(batch.place(), Verdict.ACT, String.join("; ", says), List.of(), ways);
    }

    private Remedy way(Adhesive adhesive, boolean warm, boolean named) {
        AdhesiveRemoval way = AdhesiveRemoval.of(adhesive, finish().orElse(Finish.SPIRIT_LACQUER), warm);
        String words = named ? "%s: %s".formatted(capital(adhesive.word()), way.way()) : way.way();
        return new Remedy(words, "", 1, 3, Reversible.PARTLY, way.hazards());
    }

    /** What was said on this sheet, else what the survey found, with at how many places of the batch. */
    private Map<Adhesive, Long> found(Batch batch) {
        Optional<Adhesive> said = said(batch);
        if (said.isPresent()) {
            return Map.of(said.get(), (long) batch.places());
        }
        Map<Adhesive, Long> found = new EnumMap<>(Adhesive.class);
        placesOf(ask.keywork(), batch.group(), batch.underPads()).stream()
                .flatMap(place -> Stream.ofNullable(ask.found().get(place.id())))
                .map(AdhesiveRemoval::named)
                .forEach(adhesive -> found.merge(adhesive, 1L, Long::sum));
        return found;
    }

    private Optional<Adhesive> said(Batch batch) {
        String word = ask.word(ReadingKind.ADHESIVE_FOUND, batch.place(), "");
        return Stream.of(Adhesive.values())
                .filter(one -> one.word().equals(word))
                .findFirst();
    }

    private static String inWords(Map<Adhesive, Long> found) {
        return found.entrySet().stream()
                .map(one -> "%s at %d".formatted(one.getKey().word(), one.getValue()))
                .collect(Collectors.joining(", "));
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    private Optional<Finish> finish() {
        String said = ask.word(ReadingKind.FINISH_SIGN, KEYS, FINISH);
        return Stream.of(Finish.values())
                .filter(finish -> finish.word().equals(said))
                .findFirst();
    }

    /** Keys with pearls, and vents with their soldered pips, are kept cool. */
    private boolean mayBeWarmed(Batch batch) {
        Keywork keywork = ask.keywork();
        boolean pearls = keywork.places().stream()
                .filter(place -> place.kind() == PlaceKind.PEARL)
                .anyMatch(place ->
                        keywork.groupOf(place).filter(of -> of == batch.group()).isPresent());
        return !pearls && batch.group() != KeyGroup.OCTAVE;
    }
}
