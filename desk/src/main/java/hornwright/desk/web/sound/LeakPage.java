package hornwright.desk.web.sound;

import hornwright.desk.web.view.Figure;
import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.Miniature;
import hornwright.desk.web.view.Next;
import hornwright.desk.web.view.PlacePanel;
import java.util.List;

/**
 * Leaks told from how notes answer. Question: where do I look first, and what would a leak there do?
 *
 * @param stuffy boxes to tick, one a note
 * @param fails the same for notes that jump or will not speak
 * @param said when and how it was said; empty when nobody said anything yet
 * @param horn id of the job
 * @param pads to choose from for what a leak there does
 */
public record LeakPage(
        Frame frame,
        Next next,
        String horn,
        long seq,
        String key,
        List<Box> stuffy,
        List<Box> fails,
        String said,
        Miniature figure,
        List<Suspect> suspects,
        List<PlacePanel.Option> pads,
        List<PlacePanel.Option> sizes,
        List<Suffers> suffers) {
    public LeakPage {
        stuffy = List.copyOf(stuffy);
        fails = List.copyOf(fails);
        suspects = List.copyOf(suspects);
        pads = List.copyOf(pads);
        sizes = List.copyOf(sizes);
        suffers = List.copyOf(suffers);
    }

    /** A note to tick. */
    public record Box(String fingering, String label, boolean ticked) {}

    /** A pad to look at; {@code address} is its place on the horn. */
    public record Suspect(String name, Figure share, String takes, String address, String asked) {}

    /** A note and what the leak takes from it. */
    public record Suffers(String note, Figure lost, String says) {}
}
