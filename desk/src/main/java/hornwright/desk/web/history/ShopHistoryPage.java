package hornwright.desk.web.history;

import hornwright.desk.web.view.Frame;
import java.util.List;

/** The newest edits of rules, materials and stock. Question: what was set and counted, and can it be taken back? */
public record ShopHistoryPage(Frame frame, List<Part> parts) {
    public ShopHistoryPage {
        parts = List.copyOf(parts);
    }

    /** @param of the last word of the address where one of them is taken back */
    public record Part(String title, String of, List<HistoryPage.Day> days) {
        public Part {
            days = List.copyOf(days);
        }
    }
}
