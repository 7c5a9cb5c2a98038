package hornwright.desk.web.shop;

import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.PlacePanel;
import java.util.List;
import java.util.Map;

/**
 * What cork, felt, leather and pads do. Question: which of these figures are this shop's own, and which only typical?
 *
 * @param heads of the columns, each with its unit
 * @param padHeads of the columns of the classes of pads
 * @param tests that count, the last first
 * @param typed what stood in the fields of a test that was refused, by name
 * @param faults why it was refused
 * @param seq what a form must expect
 */
public record MaterialsPage(
        Frame frame,
        List<String> heads,
        List<Row> rows,
        List<String> padHeads,
        List<Row> pads,
        List<Done> tests,
        Map<String, String> typed,
        List<String> faults,
        List<PlacePanel.Option> materials,
        List<PlacePanel.Option> classes,
        String fresh,
        long seq) {
    public MaterialsPage {
        heads = List.copyOf(heads);
        rows = List.copyOf(rows);
        padHeads = List.copyOf(padHeads);
        pads = List.copyOf(pads);
        tests = List.copyOf(tests);
        typed = Map.copyOf(typed);
        faults = List.copyOf(faults);
        materials = List.copyOf(materials);
        classes = List.copyOf(classes);
    }

    public String typed(String name) {
        return typed.getOrDefault(name, "");
    }

    public record Row(String name, List<Cell> cells) {
        public Row {
            cells = List.copyOf(cells);
        }
    }

    /**
     * One figure.
     *
     * @param rule that holds it
     * @param what it is, for who cannot see the table
     * @param source what stands behind it, in words
     * @param standing "typical, check yours", "set by this shop", "measured by this shop"
     * @param icon of that standing
     * @param own whether the shop has set it, so that it can be put back
     */
    public record Cell(
            String rule,
            String what,
            String value,
            String uncertainty,
            String unit,
            String source,
            String standing,
            String icon,
            boolean own,
            String fault) {}

    /** A test that counts: what was done, what it gave, and which edit takes it back. */
    public record Done(String words, String gave, String when, long edit, String key) {}
}
