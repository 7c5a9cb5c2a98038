package hornwright.desk.web.archive;

import hornwright.desk.web.history.HistoryPage;
import hornwright.desk.web.view.Frame;
import java.util.List;

/** The newest edits of the archive. Question: what was entered, and can it be taken back? */
public record ArchiveHistoryPage(Frame frame, List<HistoryPage.Day> days) {
    public ArchiveHistoryPage {
        days = List.copyOf(days);
    }
}
