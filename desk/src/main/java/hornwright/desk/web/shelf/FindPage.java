package hornwright.desk.web.shelf;

import hornwright.desk.web.view.Frame;
import java.util.List;

/**
 * What was found. Question: where did I read that word?
 *
 * @param horn the horn in hand, whose places are looked through too; empty when none is
 * @param told how much was found, in a sentence
 */
public record FindPage(Frame frame, String asked, String horn, String told, List<Group> groups) {
    public FindPage {
        groups = List.copyOf(groups);
    }

    /** @param more what is not shown: "and 31 more", or empty */
    public record Group(String title, List<Line> lines, String more) {
        public Group {
            lines = List.copyOf(lines);
        }
    }

    public record Line(String title, String detail, String address) {}
}
