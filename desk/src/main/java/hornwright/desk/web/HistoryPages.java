package hornwright.desk.web;

import hornwright.desk.use.Saved;
import hornwright.desk.use.ShowHistory;
import hornwright.desk.use.Undo;
import hornwright.desk.web.view.Clocks;
import hornwright.desk.web.view.HistoryPage;
import hornwright.desk.web.view.Next;
import hornwright.desk.web.view.OnBench;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What was changed on a horn, and the button that takes it back. */
final class HistoryPages {
    private final Desk desk;

    HistoryPages(Desk desk) {
        this.desk = desk;
    }

    void routes(RoutesConfig routes) {
        routes.get("/horn/{id}/history", context -> show(context, ""));
        routes.post("/horn/{id}/undo", this::undo);
    }

    private void show(Context context, String said) {
        OnBench bench = desk.bench(context);
        Words words = new Words(bench.keywork());
        Map<String, List<HistoryPage.Line>> days = new LinkedHashMap<>();
        for (ShowHistory.Line line : new ShowHistory(desk.shop()).ofJob(bench.id())) {
            days.computeIfAbsent(Clocks.day(line.at()), none -> new ArrayList<>())
                    .add(line(words, line));
        }
        desk.answer(
                context,
                "history",
                new HistoryPage(
                        desk.frame(context, bench, "History", "history"),
                        Next.of(bench),
                        bench.id(),
                        said,
                        days.entrySet().stream()
                                .map(day -> new HistoryPage.Day(day.getKey(), day.getValue()))
                                .toList()));
    }

    private static HistoryPage.Line line(Words words, ShowHistory.Line line) {
        boolean possible = line.whyNotUndo().isEmpty();
        return new HistoryPage.Line(
                line.seq(),
                Clocks.time(line.at()),
                line.who(),
                words.of(line.words()),
                line.undone(),
                possible ? "Undo" : "",
                line.undone() ? "taken back" : line.whyNotUndo().map(words::of).orElse(""),
                Desk.fresh());
    }

    private void undo(Context context) {
        OnBench bench = desk.bench(context);
        String edit = Desk.field(context, "edit");
        if (!edit.matches("\\d{1,15}")) {
            throw new Refusal(422, "Say which edit is to be taken back, by its number.");
        }
        Saved.Kept kept =
                Desk.kept(new Undo(desk.shop()).undoOfJob(bench.id(), Desk.form(context), Long.parseLong(edit)));
        Back.to(context, bench.address("history") + "#edit-" + kept.seq());
    }
}
