package hornwright.desk.web.handover;

import hornwright.desk.paper.HandOver;
import hornwright.desk.web.view.Figure;
import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.Next;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What goes home with the horn. Question: what was done, what cannot be undone, and when is it looked at again?
 *
 * @param open what stands between the horn and its owner, each a line that leads there
 * @param recheck the day in the field, "2026-12-25": the one proposed until the horn has gone back
 * @param signed how it went back; null while it has not
 */
public record HandOverPage(
        Frame frame,
        Next next,
        String horn,
        long seq,
        String fresh,
        HandOver sheet,
        HeightComb comb,
        List<HeightRow> heights,
        List<Open> open,
        String recheck,
        Proposed proposed,
        String fault,
        @Nullable Signed signed) {
    public HandOverPage {
        heights = List.copyOf(heights);
        open = List.copyOf(open);
    }

    /** One cup before and after; a height nobody took is an empty list. */
    public record HeightRow(String name, String address, List<Figure> before, List<Figure> now, List<Figure> wanted) {}

    /** The day proposed for the second look, and why that one. */
    public record Proposed(String day, Figure days, String from, Figure over) {}

    public record Open(String words, String address) {}

    /** @param since how many edits there are after the paper was made, in words; empty when none */
    public record Signed(String day, String line, String paper, String since) {}
}
