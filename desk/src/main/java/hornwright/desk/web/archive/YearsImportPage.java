package hornwright.desk.web.archive;

import hornwright.desk.web.view.Frame;
import java.util.List;

/**
 * A table of years that comes in. Question: is this table understood, and what would it add?
 *
 * @param outcome what came of trying it; empty while nothing was tried
 */
public record YearsImportPage(
        Frame frame,
        String text,
        String outcome,
        List<ImportPage.Fault> faults,
        List<Years.Row> rows,
        boolean ready,
        long seq,
        String fresh) {
    public YearsImportPage {
        faults = List.copyOf(faults);
        rows = List.copyOf(rows);
    }
}
