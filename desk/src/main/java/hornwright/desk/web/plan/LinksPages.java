package hornwright.desk.web.plan;

import hornwright.bench.plan.regulation.LinksAnswer;
import hornwright.bench.plan.regulation.SettledContact;
import hornwright.bench.survey.Decision;
import hornwright.desk.use.Regulate;
import hornwright.desk.web.measure.MeasureGrid;
import hornwright.desk.web.measure.TypedReadings;
import hornwright.desk.web.page.Back;
import hornwright.desk.web.page.Desk;
import hornwright.desk.web.page.Live;
import hornwright.desk.web.page.Refusal;
import hornwright.desk.web.page.SheetHeads;
import hornwright.desk.web.page.Units;
import hornwright.desk.web.view.OnBench;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Regulation: what the leaf finds under linked cups, what to add or take at once, and that it is done. */
public final class LinksPages {
    private final Desk desk;

    public LinksPages(Desk desk) {
        this.desk = desk;
    }

    public void routes(RoutesConfig routes) {
        routes.get("/horn/{id}/links", context -> show(context, desk.bench(context), Map.of()));
        routes.post("/horn/{id}/links/readings", this::record);
        routes.get("/horn/{id}/links/preview", this::preview);
        routes.post("/horn/{id}/links/accept", this::accept);
        routes.post("/horn/{id}/links/done", this::done);
        routes.get("/horn/{id}/links/sheet.pdf", this::sheet);
    }

    private void show(Context context, OnBench bench, Map<String, MeasureGrid.Typing> troubles) {
        LinksRows rows = rows(bench, desk.later().links(bench.job()), troubles);
        desk.answer(
                context,
                "links",
                rows.page(
                        desk.frame(context, bench, "Links", "links"),
                        desk.later().firstAssembly(bench.job()),
                        desk.later().settled(bench.job()),
                        Units.symbol(context),
                        Desk.fresh()));
    }

    private LinksRows rows(OnBench bench, LinksAnswer answer, Map<String, MeasureGrid.Typing> troubles) {
        return new LinksRows(bench, answer, desk.later().settledContacts(bench.job()), troubles);
    }

    private void record(Context context) {
        OnBench bench = desk.bench(context);
        TypedReadings typed = new TypedReadings(desk, context);
        Map<String, MeasureGrid.Typing> troubles = typed.keep(bench);
        OnBench after = desk.bench(bench.id());
        if (Live.asked(context)) {
            Set<String> sent = new LinkedHashSet<>();
            typed.fields().forEach(field -> sent.add(field.name()));
            LinksRows rows = rows(after, desk.later().links(after.job()), troubles);
            desk.answer(context, "links-live", rows.live(sent, false, Desk.fresh()));
        } else if (troubles.isEmpty()) {
            Back.to(context, after.address("links"));
        } else {
            context.status(422);
            show(context, after, troubles);
        }
    }

    /** What would follow from what is being typed; nothing is kept. */
    private void preview(Context context) {
        OnBench bench = desk.bench(context);
        LinksAnswer ahead = new TypedReadings(desk, context)
                .ahead(bench)
                .map(readings -> desk.later().linksIfRead(bench.job(), readings))
                .orElseGet(() -> desk.later().links(bench.job()));
        desk.answer(context, "links-live", rows(bench, ahead, Map.of()).live(Set.of(), true, Desk.fresh()));
    }

    private void accept(Context context) {
        OnBench bench = desk.bench(context);
        List<Decision.Contact> contacts = desk.later().links(bench.job()).toDo().stream()
                .flatMap(line -> LinksRows.decided(line).stream())
                .toList();
        if (contacts.isEmpty()) {
            throw new Refusal(409, "There is nothing to alter by these readings; load the page again.");
        }
        Desk.kept(new Regulate(desk.shop()).accept(bench.id(), Desk.form(context), contacts));
        Back.to(context, bench.address("links") + "#work");
    }

    private void done(Context context) {
        OnBench bench = desk.bench(context);
        String link = Desk.field(context, "link");
        Decision.Contact contact = desk.later().settledContacts(bench.job()).stream()
                .filter(one -> one.link().id().equals(link))
                .map(SettledContact::decision)
                .findFirst()
                .orElseThrow(
                        () -> new Refusal(409, "Nothing is settled at this contact any more; load the page again."));
        Regulate regulate = new Regulate(desk.shop());
        Desk.kept(
                Desk.field(context, "act").equals("drop")
                        ? regulate.drop(bench.id(), Desk.form(context), contact)
                        : regulate.done(bench.id(), Desk.form(context), contact));
        Back.to(
                context,
                Desk.field(context, "back").equals("work")
                        ? bench.address("work") + "#contacts"
                        : bench.address("links") + "#work");
    }

    private void sheet(Context context) {
        OnBench bench = desk.bench(context);
        byte[] pdf = rows(bench, desk.later().links(bench.job()), Map.of())
                .sheet(SheetHeads.of(desk, bench), desk.later().settled(bench.job()))
                .pdf(SheetHeads.size(context));
        context.contentType("application/pdf");
        context.header("Content-Disposition", "inline; filename=\"regulation.pdf\"");
        context.result(pdf);
    }
}
