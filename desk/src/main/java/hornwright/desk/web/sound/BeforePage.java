package hornwright.desk.web.sound;

import hornwright.desk.web.view.Figure;
import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.Next;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Arrival and now over each other. Question: what has changed, and what only seems to?
 *
 * @param earlier the first play test in words; empty when there are not two
 * @param words what changed, a sentence each
 */
public record BeforePage(
        Frame frame,
        Next next,
        String earlier,
        String later,
        @Nullable TuningPicture picture,
        String band,
        @Nullable Figure common,
        List<String> words,
        List<Line> notes,
        List<Line> heights,
        @Nullable Line leak) {
    public BeforePage {
        words = List.copyOf(words);
        notes = List.copyOf(notes);
        heights = List.copyOf(heights);
    }

    /** One thing both times; {@code changed} is false for what differs less than its own doubt. */
    public record Line(String name, Figure before, Figure now, Figure difference, boolean changed) {}
}
