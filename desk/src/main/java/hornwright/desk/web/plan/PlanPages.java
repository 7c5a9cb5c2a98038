package hornwright.desk.web.plan;

import hornwright.bench.plan.Becauses;
import hornwright.bench.sheet.SheetAsked;
import hornwright.desk.web.page.Desk;
import hornwright.desk.web.page.Live;
import hornwright.desk.web.page.Refusal;
import hornwright.desk.web.sheets.BenchSheet;
import hornwright.desk.web.view.OnBench;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** The plan as rows, and the because of each of its numbers. */
public final class PlanPages {
    /** Steps back that an address remembers. */
    private static final int FARTHEST_BACK = 8;

    private final Desk desk;

    public PlanPages(Desk desk) {
        this.desk = desk;
    }

    public void routes(RoutesConfig routes) {
        routes.get("/horn/{id}/plan", this::plan);
        routes.get("/horn/{id}/because", this::because);
    }

    private void plan(Context context) {
        OnBench bench = desk.bench(context);
        desk.answer(
                context,
                "plan",
                new PlanRows(bench).page(desk.frame(context, bench, "Plan", "plan"), desk.missing(bench)));
    }

    /** A page of its own; asked for by a page that is already there, only the sum, to be opened beside the number. */
    private void because(Context context) {
        OnBench bench = desk.bench(context);
        String id = Objects.requireNonNullElse(context.queryParam("of"), "");
        Becauses becauses = table(bench, id);
        if (becauses.find(id).isEmpty()) {
            throw Refusal.notFound(
                    "The plan has changed and this number is reckoned anew; open it again from its page.");
        }
        List<String> read = new ArrayList<>();
        for (String before : read(context, id)) {
            Becauses known = becauses.find(before).isPresent() ? becauses : becauses.and(table(bench, before));
            if (known.find(before).isPresent()) {
                becauses = known;
                read.add(before);
            }
        }
        Reasons reasons = Reasons.of(bench.id(), becauses, id, read);
        if (Live.asked(context)) {
            desk.answer(context, "reasons", reasons);
        } else {
            desk.answer(
                    context,
                    "because",
                    new BecausePage(desk.frame(context, bench, "Because", "plan"), reasons, bench.address("plan")));
        }
    }

    /** What was read on the way here; a because that is opened again leads back to what it led back to before. */
    private static List<String> read(Context context, String id) {
        List<String> all = context.queryParams("by").stream().distinct().toList();
        List<String> until = all.contains(id) ? all.subList(0, all.indexOf(id)) : all;
        return until.subList(Math.max(0, until.size() - FARTHEST_BACK), until.size());
    }

    private Becauses table(OnBench bench, String id) {
        Becauses becauses = becauses(bench, id);
        return becauses.find(id).isPresent() ? becauses : desk.becauses(bench, id);
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
