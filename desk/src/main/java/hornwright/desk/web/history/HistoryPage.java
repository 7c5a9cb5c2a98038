package hornwright.desk.web.history;

import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.Next;
import java.util.List;

/** Every edit of this horn, newest first. Question: who changed what, when, and can it be taken back? */
public record HistoryPage(Frame frame, Next next, String horn, String said, List<Day> days) {
    public HistoryPage {
        days = List.copyOf(days);
    }

    public record Day(String date, List<Line> lines) {
        public Day {
            lines = List.copyOf(lines);
        }
    }

    /**
     * @param undoable whether it can be taken back now
     * @param why why it cannot be, or that it was
     * @param key the key of that undo
     */
    public record Line(long seq, String time, String words, boolean undone, boolean undoable, String why, String key) {}
}
