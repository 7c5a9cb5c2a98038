package hornwright.desk.web.history;

import hornwright.desk.use.Saved;
import hornwright.desk.use.ShowHistory;
import hornwright.desk.use.Undo;
import hornwright.desk.web.page.Back;
import hornwright.desk.web.page.Desk;
import hornwright.desk.web.page.Refusal;
import hornwright.desk.web.page.Words;
import hornwright.desk.web.view.Next;
import hornwright.desk.web.view.OnBench;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;

/** What was changed on a horn, and the button that takes it back. */
public final class HistoryPages {
    private final Desk desk;

    public HistoryPages(Desk desk) {
        this.desk = desk;
    }

    public void routes(RoutesConfig routes) {
        routes.get("/horn/{id}/history", context -> show(context, ""));
        routes.post("/horn/{id}/undo", this::undo);
    }

    private void show(Context context, String said) {
        OnBench bench = desk.bench(context);
        Words words = new Words(bench.keywork());
        desk.answer(
                context,
                "history",
                new HistoryPage(
                        desk.frame(context, bench, "History", "history"),
                        Next.of(bench),
                        bench.id(),
                        said,
                        EditDays.of(new ShowHistory(desk.shop()).ofJob(bench.id()), words::of)));
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
