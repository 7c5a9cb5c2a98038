package hornwright.desk.web.archive;

import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.PlacePanel;
import java.util.List;

/**
 * A table of looks on its way into the archive. Question: is this table understood, and what would it add?
 *
 * @param said what was just done; empty otherwise
 * @param undo the number of the edit that can be taken back; 0 for none
 * @param tried whether there is a table to speak of
 * @param faults every one, with its line
 */
public record ImportPage(
        Frame frame,
        String said,
        long undo,
        long seq,
        String fresh,
        String text,
        String maker,
        boolean tried,
        String outcome,
        List<Column> columns,
        List<Fault> faults,
        List<Look> looks,
        boolean ready) {
    public ImportPage {
        columns = List.copyOf(columns);
        faults = List.copyOf(faults);
        looks = List.copyOf(looks);
    }

    /** One thing a table can tell, and by which of its columns it does. */
    public record Column(String word, String meaning, boolean needed, List<PlacePanel.Option> heads) {
        public Column {
            heads = List.copyOf(heads);
        }
    }

    public record Fault(String line, String column, String what, String example) {}

    /** A look as it would be kept. */
    public record Look(String horn, String place, String material, String rest) {}
}
