package hornwright.desk.web.archive;

import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.PlacePanel;
import java.util.List;

/**
 * Sending and receiving what is known. Question: what would leave this shop, and what came in?
 *
 * @param cut what a part of it can be cut by
 * @param horns on the shelf, whose survey can be packed
 * @param came address of a horn that came in; empty for none
 * @param undo the edit that can be taken back; 0 for none
 */
public record SharePage(
        Frame frame,
        String said,
        long undo,
        long seq,
        String fresh,
        String fault,
        List<String> conflicts,
        List<Part> parts,
        Cut cut,
        List<PlacePanel.Option> horns,
        String came,
        String hash) {
    public SharePage {
        conflicts = List.copyOf(conflicts);
        parts = List.copyOf(parts);
        horns = List.copyOf(horns);
    }

    /** What is known of one maker's horns, and where it is packed. */
    public record Part(String maker, String fact, String address) {}

    /** By what a part is cut: a place, serials, a paper or a person. */
    public record Cut(List<PlacePanel.Option> makers, List<PlacePanel.Option> places, List<PlacePanel.Option> origins) {
        public Cut {
            makers = List.copyOf(makers);
            places = List.copyOf(places);
            origins = List.copyOf(origins);
        }
    }
}
