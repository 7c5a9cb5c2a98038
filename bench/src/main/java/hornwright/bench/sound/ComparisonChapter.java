package hornwright.bench.sound;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Fingering;
import hornwright.bench.horn.Keywork;
import hornwright.bench.plan.Because;
import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import hornwright.bench.plan.measured.ReadNumbers;
import hornwright.bench.sound.Baseline.Played;
import hornwright.bench.sound.Comparison.HeightChange;
import hornwright.bench.sound.Comparison.LeakChange;
import hornwright.bench.sound.Comparison.NoteChange;
import hornwright.bench.survey.PlayTest;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Lays arrival and now over each other: tuning, heights, leak. */
public final class ComparisonChapter {
    private final SoundQuestion ask;
    private final Keywork keywork;
    private final Reasons reasons = new Reasons();

    private ComparisonChapter(SoundQuestion ask) {
        this.ask = ask;
        keywork = ask.keywork();
    }

    /** @param readings every reading that ever counted, the replaced ones first */
    public static Comparison compare(SoundQuestion ask, List<Reading> readings) {
        return new ComparisonChapter(ask).compare(readings);
    }

    private Comparison compare(List<Reading> readings) {
        List<PlayTest> played =
                ask.tests().stream().filter(test -> !test.notes().isEmpty()).toList();
        if (played.size() < 2) {
            return new Comparison(null, null, null, List.of(), heights(), leak(readings), reasons.table());
        }
        PlayTest earlier = played.getFirst();
        PlayTest later = played.getLast();
        Optional<Baseline> baseline =
                Baseline.compare(plays(earlier), plays(later), ask.rules().value("sound.repeat_cents"));
        PlannedNumber common = baseline.map(this::common).orElse(null);
        List<NoteChange> notes =
                baseline.map(found -> notes(found, earlier, later)).orElse(List.of());
        return new Comparison(earlier, later, common, notes, heights(), leak(readings), reasons.table());
    }

    private static List<Played> plays(PlayTest test) {
        return test.notes().stream()
                .map(note -> new Played(note.fingering(), note.cents()))
                .toList();
    }

    private PlannedNumber common(Baseline baseline) {
        PlannedNumber spread = reasons.rule(ask.rules(), "sound.repeat_cents");
        PlannedNumber told = reasons.derive(
                "sound/compare/common",
                "the middle one of all differences, later less earlier: warmth, reed, mouthpiece on its cork",
                "cents",
                in -> baseline.common(),
                Because.Input.of("spread of one playing when none is repeated", spread));
        return with(told, baseline.common(), baseline.commonU());
    }

    private List<NoteChange> notes(Baseline baseline, PlayTest earlier, PlayTest later) {
        double middleBefore = middle(earlier);
        List<NoteChange> notes = new ArrayList<>();
        for (Baseline.Difference difference : baseline.notes()) {
            Fingering fingering = keywork.fingerings().get(difference.fingering());
            double before = mean(earlier, fingering) - middleBefore;
            PlannedNumber was = heard("earlier", earlier, fingering, before, difference.u() / Math.sqrt(2));
            PlannedNumber is =
                    heard("later", later, fingering, before + difference.cents(), difference.u() / Math.sqrt(2));
            PlannedNumber told = reasons.derive(
                    "sound/compare/" + fingering.id(),
                    "later - earlier; what all notes share is taken off both",
                    "cents",
                    in -> in[0] - in[1],
                    Because.Input.of("later", is),
                    Because.Input.of("earlier", was));
            notes.add(new NoteChange(fingering, was, is, with(told, difference.cents(), difference.u())));
        }
        notes.sort(java.util.Comparator.comparingInt(
                note -> keywork.fingerings().list().indexOf(note.fingering())));
        return notes;
    }

    private PlannedNumber heard(String which, PlayTest test, Fingering fingering, double cents, double u) {
        Because.Leaf leaf = new Because.FromReading(
                "sound/compare/%s/%s".formatted(which, fingering.id()),
                "%s as heard in the %s play test, what all notes share taken off"
                        .formatted(WrittenNote.shown(fingering), which),
                test.id(),
                test.heardBy().word());
        return reasons.leaf(leaf, cents, "cents", u);
    }

    private static double mean(PlayTest test, Fingering fingering) {
        return test.notes().stream()
                .filter(note -> note.fingering().equals(fingering.id()))
                .mapToDouble(PlayTest.Playing::cents)
                .average()
                .orElse(Double.NaN);
    }

    private double middle(PlayTest test) {
        return HeightAdvice.median(keywork.fingerings().stream()
                .mapToDouble(fingering -> mean(test, fingering))
                .filter(Double::isFinite)
                .toArray());
    }

    private List<HeightChange> heights() {
        List<HeightChange> heights = new ArrayList<>();
        for (Cup cup : keywork.cups()) {
            String pad = "pad." + cup.hole();
            Optional<PlannedNumber> before = ask.plan().number(pad, NumberName.HEIGHT_BEFORE);
            Optional<PlannedNumber> now = ask.plan().number(pad, NumberName.HEIGHT_NOW);
            if (before.isPresent() && now.isPresent() && !before.get().equals(now.get())) {
                heights.add(new HeightChange(
                        cup, before.get(), now.get(), difference("height " + cup.id(), now.get(), before.get())));
            }
        }
        return heights;
    }

    private @Nullable LeakChange leak(List<Reading> readings) {
        ReadNumbers read = new ReadNumbers(ask.rules(), reasons);
        List<Reading> leaks = readings.stream()
                .filter(reading -> reading.kind() == ReadingKind.LEAK)
                .toList();
        Optional<PlannedNumber> before = leaks.stream()
                .filter(reading -> reading.stage() == Stage.ARRIVAL)
                .findFirst()
                .flatMap(read::amount);
        Optional<PlannedNumber> now = leaks.stream()
                .filter(reading -> reading.stage() != Stage.ARRIVAL)
                .reduce((first, second) -> second)
                .flatMap(read::amount);
        return before.isEmpty() || now.isEmpty()
                ? null
                : new LeakChange(before.get(), now.get(), difference("leak", now.get(), before.get()));
    }

    private PlannedNumber difference(String id, PlannedNumber now, PlannedNumber before) {
        return reasons.derive(
                "sound/compare/" + id,
                "now - as it came",
                now.unit(),
                in -> in[0] - in[1],
                Because.Input.of("now", now),
                Because.Input.of("as it came", before));
    }

    private static PlannedNumber with(PlannedNumber told, double value, double u) {
        return new PlannedNumber(value, told.unit(), u, told.because(), null, null, null);
    }
}
