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
import java.util.List;
import java.util.Optional;
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
                List<Place> places = keywork.places()
                        .where(place -> place.kind() == PlaceKind.ADHESIVE
                                && isUnderPad(place) == underPads
                                && keywork.groupOf(place)
                                        .filter(of -> of == group)
                                        .isPresent());
                if (!places.isEmpty()) {
                    batches.add(new Batch(group, underPads, places.getFirst().id(), places.size()));
                }
            }
        }
        return batches;
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

    private SheetLine finishLine() {
        return finish().isPresent()
                ? SheetLine.of(FINISH, Verdict.GOOD, "")
                : SheetLine.of(
                        FINISH, Verdict.UNTRIED, "not said: every way below is the one for the tenderest finish");
    }

    private SheetLine line(Batch batch) {
        Optional<Adhesive> found = Stream.of(Adhesive.values())
                .filter(one -> one.word().equals(ask.word(ReadingKind.ADHESIVE_FOUND, batch.place(), "")))
                .findFirst();
        if (found.isEmpty()) {
            return SheetLine.untried(batch.place());
        }
        boolean warm = mayBeWarmed(batch);
        AdhesiveRemoval way = AdhesiveRemoval.of(found.get(), finish().orElse(Finish.SPIRIT_LACQUER), warm);
        String says = warm ? "" : "not to be warmed: pearls, celluloid or soft solder are close by";
        return new SheetLine(
                batch.place(),
                Verdict.ACT,
                says,
                List.of(),
                List.of(new Remedy(way.way(), "", 1, 3, Reversible.YES, way.hazards())));
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
