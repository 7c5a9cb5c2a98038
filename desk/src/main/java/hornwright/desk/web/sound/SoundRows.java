package hornwright.desk.web.sound;

import hornwright.bench.horn.Fingering;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.sound.SoundAnswer;
import hornwright.bench.sound.SoundAnswer.ChangeLine;
import hornwright.bench.sound.SoundAnswer.Fitted;
import hornwright.bench.sound.SoundAnswer.NoteLine;
import hornwright.bench.sound.WrittenNote;
import hornwright.bench.survey.PlayTest;
import hornwright.bench.survey.PlayTest.Conditions;
import hornwright.bench.survey.Stage;
import hornwright.desk.web.view.Figure;
import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.Next;
import hornwright.desk.web.view.OnBench;
import hornwright.desk.web.view.PlacePanel;
import hornwright.desk.web.view.SoundScripts;
import hornwright.desk.web.view.Written;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The sound of a horn as a page shows it. */
public final class SoundRows {
    private static final String BAND = "sound.note-within_cents";

    private final OnBench bench;
    private final SoundAnswer answer;
    private final Set<String> chosen;
    private final double band;
    private final double bellMm;
    private final Supplier<String> keys;

    /**
     * @param chosen fingerings that heights shall bring nearer; none for all outside the band
     * @param keys makes a fresh key for each form
     */
    public SoundRows(OnBench bench, SoundAnswer answer, Set<String> chosen, ShopRules rules, Supplier<String> keys) {
        this.bench = bench;
        this.answer = answer;
        this.chosen = chosen;
        band = rules.value(BAND);
        bellMm = rules.value("sound.bell-extra_mm");
        this.keys = keys;
    }

    /** The rule of the shop the band comes from. */
    public static String bandRule() {
        return BAND;
    }

    public SoundPage page(Frame frame, SoundScripts scripts, List<String> troubles, Map<String, String> typed) {
        PlayTest basis = answer.basis();
        PlannedNumber common = answer.common();
        return new SoundPage(
                frame,
                next(),
                bench.id(),
                bench.history().seq(),
                keys.get(),
                troubles,
                basis == null ? "" : PlayWords.inWords(basis),
                answer.notes().isEmpty()
                        ? null
                        : TuningPicture.of(answer.notes(), band, "as played", "with every height done"),
                common == null ? null : figure("what all notes share", common),
                Written.plain(band),
                restored(),
                choices(),
                answer.accepted().stream().map(this::change).toList(),
                answer.offered().stream().map(this::change).toList(),
                answer.left().stream()
                        .map(left -> new SoundPage.Left(
                                WrittenNote.shown(left.fingering()),
                                figure(WrittenNote.shown(left.fingering()), left.cents()),
                                left.ladder().stream().map(step -> step.words()).toList()))
                        .toList(),
                answer.notes().stream().map(this::note).toList(),
                new KnownRows(bench, answer.known(), answer.fitted() != null, bellMm).lines(),
                fitted(answer.fitted()),
                fields(typed),
                bench.job().playTests().reversed().stream().map(this::test).toList(),
                scripts);
    }

    private Next next() {
        if (answer.basis() == null) {
            String what =
                    "a scale, low B♭ to high F, every note held for a second; it settles which heights would help.";
            return new Next("a play test.", what, "Play a scale", "#play", "Play it");
        }
        if (!answer.offered().isEmpty()) {
            String what = answer.offered().size() == 1
                    ? "one height."
                    : answer.offered().size() + " heights.";
            return new Next(
                    "a yes or no to " + what,
                    "look at what they move, then accept or leave them.",
                    "",
                    "#offer",
                    "Look at them");
        }
        return new Next("nothing.", "play again when the heights are set.", "", "#play", "Play it");
    }

    /** The heights of the plan come first; what they do by themselves is no advice. */
    private String restored() {
        int cups = answer.restored();
        if (cups == 0) {
            return "";
        }
        return "%s elsewhere when it was played than the plan wants %s. Further than %s cents off: %d of %d notes as played, about %d with the heights of the plan, before anything below."
                .formatted(
                        cups == 1 ? "One cup stood" : cups + " cups stood",
                        cups == 1 ? "it" : "them",
                        Written.plain(band),
                        off(NoteLine::played),
                        answer.notes().size(),
                        off(NoteLine::before));
    }

    /** Notes outside the band before anything is offered, and those that were chosen. */
    private List<SoundPage.Choice> choices() {
        return answer.notes().stream()
                .filter(note -> Math.abs(note.before().value()) > band
                        || chosen.contains(note.fingering().id()))
                .map(note -> new SoundPage.Choice(
                        note.fingering().id(),
                        WrittenNote.shown(note.fingering()),
                        chosen.contains(note.fingering().id())))
                .toList();
    }

    private long off(Function<NoteLine, PlannedNumber> cents) {
        return answer.notes().stream()
                .filter(note -> Math.abs(cents.apply(note).value()) > band)
                .count();
    }

    private SoundPage.Change change(ChangeLine line) {
        String name = OnBench.capital(bench.keywork().nameOf(line.cup()).display());
        return new SoundPage.Change(
                line.cup().id(),
                name,
                Written.plain(line.to().value()),
                figure(name + " without this", bare(line.from())),
                figure(name + " aimed at", line.to()),
                line.why(),
                line.moved().stream().map(this::moved).toList(),
                keys.get());
    }

    /** The heading says where it is measured. */
    private static PlannedNumber bare(PlannedNumber height) {
        return new PlannedNumber(height.value(), height.unit(), height.u(), height.because(), null, null, null);
    }

    private SoundPage.Moved moved(SoundAnswer.Moved moved) {
        return new SoundPage.Moved(
                WrittenNote.shown(moved.fingering()),
                figure("about", moved.cents()),
                signed(moved.before()),
                signed(moved.after()),
                moved.harm().words());
    }

    private SoundPage.Note note(NoteLine line) {
        PlannedNumber planned = line.planned();
        PlannedNumber predicted = line.predicted();
        return new SoundPage.Note(
                WrittenNote.shown(line.fingering()),
                figure("as played", line.played()),
                planned == null ? null : figure("about", planned),
                predicted == null ? null : figure("about", predicted),
                line.perMm().stream()
                        .map(one -> figure(bench.keywork().nameOf(one.cup()).display(), one.cents()))
                        .toList());
    }

    private List<Figure> fitted(@Nullable Fitted fitted) {
        return fitted == null
                ? List.of()
                : List.of(
                        figure("Mouthpiece and reed", fitted.volume()),
                        figure("Neck wider by", fitted.neck()),
                        figure("Middle wider by", fitted.middle()),
                        figure("Bell wider by", fitted.bell()),
                        figure("Left unexplained", fitted.unexplained()));
    }

    private SoundPage.Test test(PlayTest test) {
        return new SoundPage.Test(
                test.id(), PlayWords.title(test), PlayWords.inWords(test.conditions()), test.leftOut(), keys.get());
    }

    /** What was typed just now, else the conditions of the last test and empty notes. */
    private SoundPage.PlayFields fields(Map<String, String> typed) {
        Conditions last = bench.job().playTests().isEmpty()
                ? new Conditions("", "", null, null, 440)
                : bench.job().playTests().getLast().conditions();
        return new SoundPage.PlayFields(
                typed.getOrDefault("mouthpiece", last.mouthpiece()),
                typed.getOrDefault("reed", last.reed()),
                typed.getOrDefault("insertion", number(last.insertionMm())),
                typed.getOrDefault("temperature", number(last.temperatureDegC())),
                typed.getOrDefault("reference", number(last.referenceHz())),
                Stream.of(Stage.values())
                        .map(stage -> new PlacePanel.Option(
                                stage.name(),
                                stage.word(),
                                stage.name()
                                        .equals(typed.getOrDefault(
                                                "stage", bench.job().stage().name()))))
                        .toList(),
                cells(1, typed),
                cells(2, typed));
    }

    private List<SoundPage.Cell> cells(int register, Map<String, String> typed) {
        return bench.keywork().fingerings().stream()
                .filter(fingering -> fingering.register() == register && fingering.standard())
                .map(fingering -> new SoundPage.Cell(
                        field(fingering), WrittenNote.shown(fingering), typed.getOrDefault(field(fingering), "")))
                .toList();
    }

    /** The name of the field a note is typed in. */
    public static String field(Fingering fingering) {
        return "cents." + fingering.id();
    }

    private static String number(@Nullable Double value) {
        return value == null ? "" : Written.plain(value);
    }

    private static String signed(double cents) {
        long whole = Math.round(cents);
        return whole > 0 ? "+" + whole : whole < 0 ? "−" + -whole : "0";
    }

    private Figure figure(String label, PlannedNumber number) {
        return Figure.of(bench.id(), label, number);
    }
}
