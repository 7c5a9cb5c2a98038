package hornwright.desk.web.measure;

import hornwright.desk.web.view.MeasureSheet;
import hornwright.desk.web.view.Next;
import hornwright.desk.web.view.OnBench;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The parts of the measuring page that a typed value changes; each stands where the part of the same id stood. Fields are
 * never among them, so that nobody's typing is lost.
 *
 * @param seq how far the job has come, for the next save
 * @param ahead whether this is only what would follow
 */
public record MeasureLive(
        long seq, boolean ahead, Next next, List<MeasurePage.Cell> cells, List<MeasurePage.Outcome> outcomes) {
    public MeasureLive {
        cells = List.copyOf(cells);
        outcomes = List.copyOf(outcomes);
    }

    /** @param fields names of the fields that were sent */
    public static MeasureLive of(
            OnBench before,
            OnBench after,
            MeasureSheet sheet,
            Map<String, MeasureGrid.Typing> typings,
            List<String> fields,
            boolean ahead) {
        Map<String, MeasurePage.Outcome> were = new HashMap<>();
        for (MeasurePage.Row row : new MeasureGrid(before, sheet, Map.of()).rows()) {
            row.outcomes().forEach(outcome -> were.put(outcome.id(), outcome));
        }
        List<MeasurePage.Cell> cells = new ArrayList<>();
        List<MeasurePage.Outcome> outcomes = new ArrayList<>();
        for (MeasurePage.Row row : new MeasureGrid(after, sheet, typings).rows()) {
            row.cells().stream().filter(cell -> fields.contains(cell.name())).forEach(cells::add);
            row.outcomes().stream()
                    .filter(outcome -> !outcome.equals(were.get(outcome.id())))
                    .forEach(outcomes::add);
        }
        return new MeasureLive(after.history().seq(), ahead, Next.of(after), cells, outcomes);
    }
}
