package hornwright.desk.web.measure;

import hornwright.desk.web.view.Figure;
import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.Next;
import hornwright.desk.web.view.PlacePanel;
import hornwright.desk.web.view.UnitChoice;
import java.util.List;

/**
 * The measuring grid. Question: what does the instrument read, point by point, and what follows at once?
 *
 * @param seq how far the job had come when this was made
 * @param settles what its empty fields would decide, in words; empty when the plan asks for none of them
 * @param instruments to read with, the usual one first; empty where nothing is measured
 * @param fresh the key of the next save, so that a repeat is harmless
 */
public record MeasurePage(
        Frame frame,
        String horn,
        long seq,
        Next next,
        List<Tab> sheets,
        String sheet,
        String title,
        String how,
        String settles,
        boolean wordy,
        List<PlacePanel.Option> instruments,
        List<UnitChoice> units,
        List<String> headings,
        List<String> results,
        List<Row> rows,
        List<Trouble> troubles,
        String fresh) {
    public MeasurePage {
        sheets = List.copyOf(sheets);
        instruments = List.copyOf(instruments);
        units = List.copyOf(units);
        headings = List.copyOf(headings);
        results = List.copyOf(results);
        rows = List.copyOf(rows);
        troubles = List.copyOf(troubles);
    }

    /** A sheet to change to, with how far it is filled, in words. */
    public record Tab(String title, String address, String fact, boolean current) {
        /** The same sheet shown elsewhere. */
        public Tab at(String other) {
            return new Tab(title, other, fact, current);
        }
    }

    /** One cup, key or place of the sheet. */
    public record Row(String id, String name, String address, List<Cell> cells, List<Outcome> outcomes) {}

    /**
     * One field.
     *
     * @param name {@code r/KIND/of/point}, which is all the server needs to know what was typed
     * @param said "saved 10:42:07", a sentence about the value, or empty
     * @param fault what is wrong with it; empty when nothing is
     */
    public record Cell(
            String id,
            String name,
            String label,
            String typed,
            String said,
            String remark,
            String fault,
            boolean first) {}

    /** What the plan makes of the row; with no figure, the words say what it waits for. */
    public record Outcome(String id, String label, List<Figure> figures, String words) {}

    /** One fault for the summary above the grid, leading to its field. */
    public record Trouble(String field, String sentence) {}
}
