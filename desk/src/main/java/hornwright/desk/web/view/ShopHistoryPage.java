package hornwright.desk.web.view;

import java.util.List;

/** The newest edits of rules, materials and stock. Question: what was set and counted, and can it be taken back? */
public record ShopHistoryPage(Frame frame, List<Part> parts) {
    public ShopHistoryPage {
        parts = List.copyOf(parts);
    }

    /** @param of the word by which the form says which of them it means */
    public record Part(String title, String of, List<ArchiveHistoryPage.Line> lines) {
        public Part {
            lines = List.copyOf(lines);
        }
    }
}
