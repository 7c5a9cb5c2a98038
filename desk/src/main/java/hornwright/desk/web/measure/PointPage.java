package hornwright.desk.web.measure;

import hornwright.desk.web.view.Figure;
import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.Miniature;
import hornwright.desk.web.view.Next;
import java.util.List;

/**
 * One point to measure, read from two metres. Question: what does the instrument read here?
 *
 * @param n which point of the sheet, counted from 0
 * @param position "7 of 48"
 * @param value what stands in the field
 * @param settles what it would decide while the field is empty; empty when the plan does not ask for it
 * @param fault why it was not kept; empty when nothing is wrong
 * @param sure the text that was asked about: sent again it is kept
 * @param skip where the next point is; {@code back} where the one before
 */
public record PointPage(
        Frame frame,
        Next next,
        String horn,
        long seq,
        String fresh,
        String sheet,
        String title,
        List<MeasurePage.Tab> sheets,
        int n,
        String position,
        String where,
        String what,
        String unit,
        String value,
        String said,
        String settles,
        String fault,
        String sure,
        String skip,
        String before,
        String last,
        List<Figure> follows,
        Miniature figure) {
    public PointPage {
        sheets = List.copyOf(sheets);
        follows = List.copyOf(follows);
    }
}
