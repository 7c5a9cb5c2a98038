package hornwright.desk.web;

import hornwright.desk.paper.BenchPaper;
import hornwright.desk.web.view.OnBench;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.stream.Stream;

/** The papers of a horn, made from its plan as it stands when they are asked for. */
final class PaperPages {
    private final Desk desk;

    PaperPages(Desk desk) {
        this.desk = desk;
    }

    void routes(RoutesConfig routes) {
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
        context.contentType("application/pdf");
        context.header("Content-Disposition", "inline; filename=\"" + paper.fileName() + "\"");
        context.result(pdf);
    }
}
