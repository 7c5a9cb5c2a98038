package hornwright.desk.web.sheets;

import hornwright.desk.web.measure.MeasurePage;
import hornwright.desk.web.view.Next;
import java.util.List;

/** The parts of a bench sheet that a typed value changes; each stands where the part of the same id stood. */
public record SheetLive(
        long seq,
        boolean ahead,
        Next next,
        String summary,
        List<MeasurePage.Cell> cells,
        List<SheetPage.Answer> answers,
        List<String> order) {
    public SheetLive {
        cells = List.copyOf(cells);
        answers = List.copyOf(answers);
        order = List.copyOf(order);
    }
}
