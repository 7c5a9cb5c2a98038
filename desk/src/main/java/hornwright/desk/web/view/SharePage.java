package hornwright.desk.web.view;

import java.util.List;

/**
 * Sending and receiving what is known. Question: what would leave this shop, and what came in?
 *
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
        String hash) {
    public SharePage {
        conflicts = List.copyOf(conflicts);
        parts = List.copyOf(parts);
    }

    /** What is known of one maker's horns, and where it is packed. */
    public record Part(String maker, String fact, String address) {}
}
