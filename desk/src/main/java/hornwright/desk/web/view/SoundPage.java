package hornwright.desk.web.view;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The tuning. Question: how does it play, and what would bring it nearer?
 *
 * @param troubles sentences about a form that was not understood
 * @param conditions of the play test that is shown; empty when there is none
 * @param restored what the heights of the plan do by themselves, in a sentence or two; empty when the horn was played with them
 * @param known what is measured, fitted and of the pattern, a sentence each
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
        List<Change> accepted,
        List<Change> offered,
        List<Left> left,
        List<Note> notes,
        List<String> known,
        List<Figure> fitted,
        PlayFields play,
        List<Test> tests,
        SoundScripts scripts) {
    public SoundPage {
        troubles = List.copyOf(troubles);
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
