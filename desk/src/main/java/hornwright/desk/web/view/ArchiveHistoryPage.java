package hornwright.desk.web.view;

import java.util.List;

/** The newest edits of the archive. Question: what was entered, and can it be taken back? */
public record ArchiveHistoryPage(Frame frame, List<Line> lines) {
    public ArchiveHistoryPage {
        lines = List.copyOf(lines);
    }

    /**
     * @param undoable whether it can be undone now
     * @param why why not, or that it is undone
     * @param key the key of that undo
     */
    public record Line(long seq, String at, String words, boolean undone, boolean undoable, String why, String key) {}
}
