package hornwright.desk.web.photo;

import hornwright.desk.json.BadInput;
import hornwright.desk.paper.BagLabel;
import hornwright.desk.paper.BagLabels;
import hornwright.desk.paper.SheetHead;
import hornwright.desk.use.Saved;
import hornwright.desk.use.StorePart;
import hornwright.desk.web.page.Back;
import hornwright.desk.web.page.Desk;
import hornwright.desk.web.page.Refusal;
import hornwright.desk.web.page.SheetHeads;
import hornwright.desk.web.view.Clocks;
import hornwright.desk.web.view.Next;
import hornwright.desk.web.view.OnBench;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.stream.Stream;

/** Removed originals, where they lie, and the labels of bags and trays. */
public final class KeptPages {
    private final Desk desk;

    public KeptPages(Desk desk) {
        this.desk = desk;
    }

    public void routes(RoutesConfig routes) {
        routes.get("/horn/{id}/kept", context -> show(context, ""));
        routes.post("/horn/{id}/kept", this::store);
        routes.post("/horn/{id}/kept/out", this::takeOut);
        routes.get("/horn/{id}/labels.pdf", this::print);
    }

    private void show(Context context, String fault) {
        OnBench bench = desk.bench(context);
        KeptRows rows = new KeptRows(bench);
        desk.answer(
                context,
                "kept",
                new KeptPage(
                        desk.frame(context, bench, "Kept parts", "kept"),
                        Next.of(bench),
                        bench.id(),
                        context.queryParam("saved") == null
                                ? ""
                                : "saved "
                                        + Clocks.time(bench.history()
                                                .edits()
                                                .getLast()
                                                .at()),
                        fault,
                        bench.history().seq(),
                        Desk.fresh(),
                        rows.bags(),
                        rows.coming(),
                        rows.places(),
                        Desk.field(context, "store")));
    }

    private void store(Context context) {
        OnBench bench = desk.bench(context);
        KeptRows rows = new KeptRows(bench);
        String own = Desk.field(context, "what");
        String other = Desk.field(context, "other");
        List<StorePart.Part> parts = Stream.concat(
                        context.formParams("place").stream().map(place -> new StorePart.Part(place, rows.what(place))),
                        Stream.of(other)
                                .filter(place -> !place.isEmpty())
                                .map(place -> new StorePart.Part(place, own.isEmpty() ? rows.what(place) : own)))
                .toList();
        try {
            Saved.Kept kept = Desk.kept(new StorePart(desk.shop())
                    .store(bench.id(), Desk.form(context), parts, Desk.field(context, "store")));
            Back.to(context, bench.address("kept") + "?saved=" + kept.seq());
        } catch (BadInput bad) {
            context.status(422);
            show(context, Refusal.sentences(bad));
        }
    }

    private void takeOut(Context context) {
        OnBench bench = desk.bench(context);
        Saved.Kept kept = Desk.kept(
                new StorePart(desk.shop()).takeOut(bench.id(), Desk.form(context), Desk.field(context, "place")));
        Back.to(context, bench.address("kept") + "?saved=" + kept.seq());
    }

    private void print(Context context) {
        OnBench bench = desk.bench(context);
        KeptRows rows = new KeptRows(bench);
        String address = "http://" + context.header("Host");
        boolean trays = "trays".equals(context.queryParam("of"));
        List<BagLabel> labels = trays ? rows.trayLabels(address) : rows.bagLabels(address);
        if (labels.isEmpty()) {
            throw Refusal.notFound("No part is put by yet, so there is no bag to label.");
        }
        SheetHead head = SheetHeads.of(desk, bench);
        context.contentType("application/pdf")
                .header("Content-Disposition", "inline; filename=\"" + (trays ? "tray" : "bag") + "-labels.pdf\"")
                .result(new BagLabels(head.title(), head.line(), labels).pdf(SheetHeads.size(context)));
    }
}
