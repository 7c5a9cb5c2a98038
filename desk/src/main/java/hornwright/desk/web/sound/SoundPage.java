package hornwright.desk.web.sound;

import hornwright.desk.web.view.Figure;
import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.Next;
import hornwright.desk.web.view.PlacePanel;
import hornwright.desk.web.view.SoundScripts;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The tuning. Question: how does it play, and what would bring it nearer?
 *
 * @param troubles sentences about a form that was not understood
 * @param conditions of the play test that is shown; empty when there is none
 * @param restored what the heights of the plan do by themselves, in a sentence or two; empty when the horn was played with them
 * @param choices notes a person may want nearer, one by one
 * @param known what is measured, fitted and of the pattern, item by item
 */
public record SoundPage(
        Frame frame,
        Next next,
        String horn,
        long seq,
        String key,
        List<String> troubles,
        String conditions,
        @Nullable TuningPicture picture,
        @Nullable Figure common,
        String band,
        String restored,
        List<Choice> choices,
        List<Change> accepted,
        List<Change> offered,
        List<Left> left,
        List<Note> notes,
        List<KnownLine> known,
        List<Figure> fitted,
        PlayFields play,
        List<Test> tests,
        SoundScripts scripts) {
    public SoundPage {
        troubles = List.copyOf(troubles);
        choices = List.copyOf(choices);
        accepted = List.copyOf(accepted);
        offered = List.copyOf(offered);
        left = List.copyOf(left);
        notes = List.copyOf(notes);
        known = List.copyOf(known);
        fitted = List.copyOf(fitted);
        tests = List.copyOf(tests);
    }

    /**
     * A cup to another height.
     *
     * @param mm the height aimed at, as the form sends it back
     * @param why of an accepted one
     * @param key of its form, so that sending twice counts once
     */
    public record Change(
            String cup, String name, String mm, Figure from, Figure to, String why, List<Moved> moved, String key) {
        public Change {
            moved = List.copyOf(moved);
        }
    }

    /** @param harm what it does to a note that ends outside the band, in words; empty when nothing bad */
    public record Moved(String note, Figure alone, String was, String then, String harm) {}

    public record Left(String note, Figure cents, List<String> ladder) {
        public Left {
            ladder = List.copyOf(ladder);
        }
    }

    /** @param planned with the heights of the plan; {@code predicted} with what is offered too; null when nothing moves it */
    public record Note(
            String name,
            Figure played,
            @Nullable Figure planned,
            @Nullable Figure predicted,
            List<Figure> perMm) {
        public Note {
            perMm = List.copyOf(perMm);
        }
    }

    /** A note outside the band; when none is chosen all of them count. */
    public record Choice(String fingering, String label, boolean chosen) {}

    /** The notes heights are wanted for, in words; empty for all. */
    public String wanted() {
        return choices.stream().filter(Choice::chosen).map(Choice::label).collect(Collectors.joining(", "));
    }

    /** One item of the air column: whether it was measured on this horn, fitted to how it plays, or is the pattern's. */
    public record KnownLine(String item, String from, String which) {}

    /** One play test that counts. */
    public record Test(String id, String words, String conditions, List<String> leftOut, String key) {
        public Test {
            leftOut = List.copyOf(leftOut);
        }
    }

    /** The form in which a horn is played, with what was typed last. */
    public record PlayFields(
            String mouthpiece,
            String reed,
            String insertion,
            String temperature,
            String reference,
            List<PlacePanel.Option> stages,
            List<Cell> lower,
            List<Cell> upper) {
        public PlayFields {
            stages = List.copyOf(stages);
            lower = List.copyOf(lower);
            upper = List.copyOf(upper);
        }
    }

    /** The field of one note. */
    public record Cell(String name, String label, String typed) {}
}
