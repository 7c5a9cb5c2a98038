package hornwright.desk.web.history;

import hornwright.desk.use.ShowHistory;
import hornwright.desk.web.page.Desk;
import hornwright.desk.web.view.Clocks;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/** Edits under the day they were made on. */
public final class EditDays {
    private EditDays() {}

    /** In the order given; the words of an edit are said as the page says them. */
    public static List<HistoryPage.Day> of(List<ShowHistory.Line> lines, UnaryOperator<String> said) {
        Map<String, List<HistoryPage.Line>> days = new LinkedHashMap<>();
        for (ShowHistory.Line line : lines) {
            days.computeIfAbsent(Clocks.day(line.at()), none -> new ArrayList<>())
                    .add(line(line, said));
        }
        return days.entrySet().stream()
                .map(day -> new HistoryPage.Day(day.getKey(), day.getValue()))
                .toList();
    }

    private static HistoryPage.Line line(ShowHistory.Line line, UnaryOperator<String> said) {
        return new HistoryPage.Line(
                line.seq(),
                Clocks.time(line.at()),
                said.apply(line.words()),
                line.undone(),
                line.whyNotUndo().isEmpty(),
                line.undone() ? "taken back" : line.whyNotUndo().map(said).orElse(""),
                Desk.fresh());
    }
}
