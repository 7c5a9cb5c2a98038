package hornwright.desk.web;

import hornwright.bench.plan.Becauses;
import hornwright.bench.sheet.SheetAsked;
import hornwright.desk.web.view.BecausePage;
import hornwright.desk.web.view.BenchSheet;
import hornwright.desk.web.view.OnBench;
import hornwright.desk.web.view.PlanRows;
import hornwright.desk.web.view.Reasons;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Objects;

/** The plan as rows, and the because of each of its numbers. */
final class PlanPages {
    private final Desk desk;

    PlanPages(Desk desk) {
        this.desk = desk;
    }

    void routes(RoutesConfig routes) {
        routes.get("/horn/{id}/plan", this::plan);
        routes.get("/horn/{id}/because", this::because);
    }

    private void plan(Context context) {
        OnBench bench = desk.bench(context);
        desk.answer(context, "plan", new PlanRows(bench).page(desk.frame(context, bench, "Plan", "plan")));
    }

    /** A page of its own; asked for by a page that is already there, only the sum, to be opened beside the number. */
    private void because(Context context) {
        OnBench bench = desk.bench(context);
        String id = Objects.requireNonNullElse(context.queryParam("of"), "");
        Becauses becauses = becauses(bench, id);
        if (becauses.find(id).isEmpty()) {
            becauses = desk.becauses(bench, id);
        }
        if (becauses.find(id).isEmpty()) {
            throw Refusal.notFound(
                    "The plan has changed and this number is reckoned anew; open it again from its page.");
        }
        Reasons reasons = Reasons.of(bench.id(), becauses, id);
        if (Live.asked(context)) {
            desk.answer(context, "reasons", reasons);
        } else {
            desk.answer(
                    context,
                    "because",
                    new BecausePage(desk.frame(context, bench, "Because", "plan"), reasons, bench.address("plan")));
        }
    }

    /** The table that knows the id: the plan's, a bench sheet's, or that of a chapter reckoned later. */
    private Becauses becauses(OnBench bench, String id) {
        if (bench.plan().becauses().find(id).isPresent()) {
            return bench.plan().becauses();
        }
        Becauses sheet = BenchSheet.becauses(SheetAsked.of(desk.plans().inputs(bench.job())), id);
        return sheet.find(id).isPresent() ? sheet : desk.later().becauses(bench.job(), id);
    }
}
