package hornwright.desk.web.sheets;

import hornwright.bench.adhesive.AdhesiveSheet;
import hornwright.bench.adhesive.RoomRules;
import hornwright.bench.body.FinishSheet;
import hornwright.bench.fit.FitSheet;
import hornwright.bench.neck.NeckSheet;
import hornwright.bench.octave.OctaveSheet;
import hornwright.bench.plan.Becauses;
import hornwright.bench.rim.RimSheet;
import hornwright.bench.seal.LeakSites;
import hornwright.bench.seal.SealSheet;
import hornwright.bench.sheet.SheetAnswer;
import hornwright.bench.sheet.SheetAsked;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** The sheets that are worked at the bench, one for each sort of work that comes before the pads and after them. */
public enum BenchSheet {
    FIT(
            "fit",
            "Key fit",
            "Rock each key on its rod and push it along. Play comes out before any pad goes in: a key that wanders lands in"
                    + " a new place each time. Measure only the bad ones.",
            FitSheet::of),
    HOLES(
            "holes",
            "Tone holes",
            "A flat disc on the rim, a light inside, a feeler at the worst spot, like: 0.08 at 4 (12 is away from the hinge)."
                    + " What is lifted loses no metal; what is filed does not come back.",
            RimSheet::of),
    OCTAVE(
            "octave",
            "Octave and table",
            "A feeler at each contact in each state of the thumb and the G key; 0 where it touches. Then the low table, at rest"
                    + " and down.",
            OctaveSheet::of),
    NECK(
            "neck",
            "Neck",
            "Micrometer on the tenon two ways at both ends, the receiver inside with its screw off, then hands, eyes and a little"
                    + " air. A leak here hides behind every pad.",
            NeckSheet::of),
    LEAKS(
            "leaks",
            "Leaks",
            "Every spot where air can get out, each tried in its own way. A total hides where, so it never passes a horn.",
            SealSheet::of),
    FINISH(
            "finish",
            "Finish and stamps",
            "Where to look for a later finish, and the numbers that prove a mixed horn. Signs are counted, nothing is proved.",
            FinishSheet::of),
    ADHESIVES(
            "adhesives",
            "Adhesives",
            "What holds pads, corks and felts, group by group, and how it comes off this finish without harm to what stays.",
            AdhesiveSheet::of);

    private final String word;
    private final String title;
    private final String lead;
    private final Function<SheetAsked, SheetAnswer> room;

    BenchSheet(String word, String title, String lead, Function<SheetAsked, SheetAnswer> room) {
        this.word = word;
        this.title = title;
        this.lead = lead;
        this.room = room;
    }

    public String word() {
        return word;
    }

    public String title() {
        return title;
    }

    public String lead() {
        return lead;
    }

    /** What holds for the whole sheet; empty when its lines say it all. */
    public List<String> notes() {
        return switch (this) {
            case ADHESIVES -> RoomRules.all();
            case LEAKS -> LeakSites.cautions();
            case FIT, HOLES, OCTAVE, NECK, FINISH -> List.of();
        };
    }

    public SheetAnswer answer(SheetAsked asked) {
        return room.apply(asked);
    }

    public static Optional<BenchSheet> named(String word) {
        return Stream.of(values()).filter(sheet -> sheet.word.equals(word)).findFirst();
    }

    /** The becauses of the sheet that has this number; none when no sheet has it. */
    public static Becauses becauses(SheetAsked asked, String id) {
        return Stream.of(values())
                .map(sheet -> sheet.answer(asked).becauses())
                .filter(becauses -> becauses.find(id).isPresent())
                .findFirst()
                .orElse(Becauses.none());
    }
}
