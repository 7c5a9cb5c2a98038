package hornwright.desk.web.sheets;

import hornwright.bench.plan.PlanInputs;
import hornwright.bench.sheet.SheetAnswer;
import hornwright.bench.sheet.SheetAsked;
import hornwright.desk.web.measure.MeasureGrid;
import hornwright.desk.web.measure.TypedReadings;
import hornwright.desk.web.page.Back;
import hornwright.desk.web.page.Desk;
import hornwright.desk.web.page.Live;
import hornwright.desk.web.page.Refusal;
import hornwright.desk.web.page.Units;
import hornwright.desk.web.view.OnBench;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/** The bench sheets: readings at the left, what follows at the right, alive while one types. */
public final class SheetPages {
    private final Desk desk;

    public SheetPages(Desk desk) {
        this.desk = desk;
    }

    public void routes(RoutesConfig routes) {
        for (BenchSheet sheet : BenchSheet.values()) {
            routes.get("/horn/{id}/" + sheet.word(), context -> show(context, sheet, desk.bench(context), Map.of()));
        }
        routes.post("/horn/{id}/sheet/{sheet}", this::record);
        routes.get("/horn/{id}/sheet/{sheet}/preview", this::preview);
    }

    private void show(Context context, BenchSheet sheet, OnBench bench, Map<String, MeasureGrid.Typing> troubles) {
        SheetRows rows = new SheetRows(bench, sheet, answer(sheet, bench), troubles);
        desk.answer(
                context,
                "sheet",
                rows.page(
                        desk.frame(context, bench, sheet.title(), sheet.word()), Units.symbol(context), Desk.fresh()));
    }

    private void record(Context context) {
        BenchSheet sheet = sheet(context);
        OnBench bench = desk.bench(context);
        TypedReadings typed = new TypedReadings(desk, context);
        Map<String, MeasureGrid.Typing> troubles = typed.keep(bench);
        OnBench after = desk.bench(bench.id());
        if (Live.asked(context)) {
            Set<String> sent = new LinkedHashSet<>();
            typed.fields().forEach(field -> sent.add(field.name()));
            SheetRows was = new SheetRows(bench, sheet, answer(sheet, bench), Map.of());
            SheetRows is = new SheetRows(after, sheet, answer(sheet, after), troubles);
            desk.answer(context, "sheet-live", is.since(was, sent, false));
        } else if (troubles.isEmpty()) {
            Back.to(context, after.address(sheet.word()));
        } else {
            context.status(422);
            show(context, sheet, after, troubles);
        }
    }

    /** What the sheet would say with this reading; nothing is kept. */
    private void preview(Context context) {
        BenchSheet sheet = sheet(context);
        OnBench bench = desk.bench(context);
        SheetRows was = new SheetRows(bench, sheet, answer(sheet, bench), Map.of());
        PlanInputs inputs = desk.plans().inputs(bench.job());
        SheetAnswer ahead = new TypedReadings(desk, context)
                .ahead(bench)
                .map(readings -> sheet.answer(SheetAsked.of(inputs.withReadings(readings))))
                .orElseGet(() -> answer(sheet, bench));
        desk.answer(context, "sheet-live", new SheetRows(bench, sheet, ahead, Map.of()).since(was, Set.of(), true));
    }

    private SheetAnswer answer(BenchSheet sheet, OnBench bench) {
        return sheet.answer(SheetAsked.of(desk.plans().inputs(bench.job())));
    }

    private static BenchSheet sheet(Context context) {
        return BenchSheet.named(context.pathParam("sheet"))
                .orElseThrow(() -> Refusal.notFound("There is no such sheet; choose one from the tray."));
    }
}
