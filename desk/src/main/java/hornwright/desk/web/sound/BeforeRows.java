package hornwright.desk.web.sound;

import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.sound.Comparison;
import hornwright.bench.sound.Comparison.LeakChange;
import hornwright.bench.sound.Comparison.NoteChange;
import hornwright.bench.sound.SoundAnswer.NoteLine;
import hornwright.bench.sound.WrittenNote;
import hornwright.bench.survey.PlayTest;
import hornwright.desk.web.view.Figure;
import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.Next;
import hornwright.desk.web.view.OnBench;
import hornwright.desk.web.view.Written;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Arrival and now, as a page shows them. */
public final class BeforeRows {
    private final OnBench bench;
    private final Comparison comparison;
    private final double band;

    public BeforeRows(OnBench bench, Comparison comparison, double band) {
        this.bench = bench;
        this.comparison = comparison;
        this.band = band;
    }

    public BeforePage page(Frame frame) {
        PlayTest earlier = comparison.earlier();
        PlayTest later = comparison.later();
        PlannedNumber common = comparison.common();
        return new BeforePage(
                frame,
                next(),
                earlier == null ? "" : PlayWords.inWords(earlier),
                later == null ? "" : PlayWords.inWords(later),
                comparison.notes().isEmpty() ? null : TuningPicture.of(picture(), band, "as it came", "now"),
                Written.plain(band),
                common == null ? null : figure("all notes share", common),
                words(),
                comparison.notes().stream().map(this::note).toList(),
                comparison.heights().stream()
                        .map(height -> line(
                                bench.heading(height.cup()),
                                height.before(),
                                height.now(),
                                height.difference(),
                                height.changed()))
                        .toList(),
                leak(comparison.leak()));
    }

    /** The later session stands where a prediction would, with the doubt of the difference. */
    private List<NoteLine> picture() {
        return comparison.notes().stream()
                .map(note -> new NoteLine(
                        note.fingering(),
                        note.before(),
                        null,
                        new PlannedNumber(
                                note.after().value(),
                                "cents",
                                note.difference().u(),
                                note.after().because(),
                                null,
                                null,
                                null),
                        List.of()))
                .toList();
    }

    private Next next() {
        return comparison.later() == null
                ? new Next(
                        "a second play test.",
                        "play it again when the work is done, with the same mouthpiece and reed.",
                        "",
                        bench.address("sound") + "#play",
                        "Play it")
                : new Next("nothing.", "", "", "", "");
    }

    private List<String> words() {
        List<String> words = new ArrayList<>();
        PlayTest earlier = comparison.earlier();
        PlayTest later = comparison.later();
        if (earlier != null && later != null) {
            List<String> differing = PlayWords.differing(earlier.conditions(), later.conditions());
            if (!differing.isEmpty()) {
                words.add("Not played alike: %s. Some of what differs may come from that and not from the work."
                        .formatted(String.join("; ", differing)));
            }
        }
        long changed = comparison.notes().stream().filter(NoteChange::changed).count();
        int notes = comparison.notes().size();
        if (notes > 0) {
            words.add(
                    changed == 0
                            ? "All %d notes are equal: none differs by more than the sessions themselves spread."
                                    .formatted(notes)
                            : "%d of %d notes have changed; the others are equal, within what the sessions themselves spread."
                                    .formatted(changed, notes));
            words.add("Further than %s cents off: %d notes as it came, %d now."
                    .formatted(
                            Written.plain(band),
                            off(comparison.notes().stream()
                                    .map(NoteChange::before)
                                    .toList()),
                            off(comparison.notes().stream()
                                    .map(NoteChange::after)
                                    .toList())));
        }
        long heights = comparison.heights().stream()
                .filter(Comparison.HeightChange::changed)
                .count();
        if (!comparison.heights().isEmpty()) {
            words.add("%d of %d heights measured twice have changed."
                    .formatted(heights, comparison.heights().size()));
        }
        return words;
    }

    private long off(List<PlannedNumber> cents) {
        return cents.stream().filter(one -> Math.abs(one.value()) > band).count();
    }

    private BeforePage.Line note(NoteChange note) {
        return line(
                WrittenNote.shown(note.fingering()), note.before(), note.after(), note.difference(), note.changed());
    }

    private BeforePage.@Nullable Line leak(@Nullable LeakChange leak) {
        return leak == null ? null : line("Total leak", leak.before(), leak.now(), leak.difference(), leak.changed());
    }

    private BeforePage.Line line(
            String name, PlannedNumber before, PlannedNumber now, PlannedNumber difference, boolean changed) {
        return new BeforePage.Line(
                name,
                figure(name + " as it came", plain(before)),
                figure(name + " now", plain(now)),
                Figure.signed(bench.id(), "difference", difference),
                changed);
    }

    /** The table says where it is measured. */
    private static PlannedNumber plain(PlannedNumber number) {
        return new PlannedNumber(number.value(), number.unit(), number.u(), number.because(), null, null, null);
    }

    private Figure figure(String label, PlannedNumber number) {
        return Figure.of(bench.id(), label, number);
    }
}
