package hornwright.desk.web.shop;

import hornwright.desk.web.view.Frame;
import java.util.List;

/** The rules of the shop. Question: by which numbers does this shop work, and which of them are only typical? */
public record RulesPage(Frame frame, List<Group> groups, long seq) {
    public RulesPage {
        groups = List.copyOf(groups);
    }

    public record Group(String title, List<Line> lines) {
        public Group {
            lines = List.copyOf(lines);
        }
    }

    /** @param own whether the shop has set it, so that it can be put back */
    public record Line(
            String id,
            String says,
            String value,
            String unit,
            String label,
            String range,
            boolean own,
            String fault,
            String key) {}
}
