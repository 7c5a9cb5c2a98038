package hornwright.desk.web.plan;

import hornwright.bench.sheet.SheetAsked;
import hornwright.desk.paper.AdhesiveStrip;
import hornwright.desk.paper.BenchPaper;
import hornwright.desk.web.page.Desk;
import hornwright.desk.web.page.Refusal;
import hornwright.desk.web.page.SheetHeads;
import hornwright.desk.web.view.OnBench;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.stream.Stream;

/** The papers of a horn, made from its plan as it stands when they are asked for. */
public final class PaperPages {
    private static final String ADHESIVES = "adhesives.pdf";

    private final Desk desk;

    public PaperPages(Desk desk) {
        this.desk = desk;
    }

    public void routes(RoutesConfig routes) {
        routes.get("/horn/{id}/paper/" + ADHESIVES, this::adhesives);
        routes.get("/horn/{id}/paper/{sheet}", this::print);
    }

    private void print(Context context) {
        OnBench bench = desk.bench(context);
        BenchPaper paper = Stream.of(BenchPaper.values())
                .filter(one -> one.fileName().equals(context.pathParam("sheet")))
                .findFirst()
                .orElseThrow(() -> Refusal.notFound("There is no such paper."));
        byte[] pdf = paper.of(
                bench.keywork(),
                desk.later().planWithLinks(bench.job()),
                SheetHeads.of(desk, bench),
                SheetHeads.size(context));
        send(context, paper.fileName(), pdf);
    }

    /** Follows from readings and the survey, so that it needs no plan. */
    private void adhesives(Context context) {
        OnBench bench = desk.bench(context);
        SheetAsked asked = SheetAsked.of(desk.plans().inputs(bench.job()));
        send(
                context,
                ADHESIVES,
                AdhesiveStrip.of(asked, SheetHeads.of(desk, bench)).pdf(SheetHeads.size(context)));
    }

    private static void send(Context context, String fileName, byte[] pdf) {
        context.contentType("application/pdf");
        context.header("Content-Disposition", "inline; filename=\"" + fileName + "\"");
        context.result(pdf);
    }
}
