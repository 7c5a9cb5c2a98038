package hornwright.desk.web.feel;

import hornwright.bench.horn.Key;
import hornwright.bench.plan.seat.SeatAnswer;
import hornwright.bench.survey.PadClass;
import hornwright.desk.json.BadInput;
import hornwright.desk.use.TestMaterial;
import hornwright.desk.web.page.Back;
import hornwright.desk.web.page.Desk;
import hornwright.desk.web.page.Refusal;
import hornwright.desk.web.page.SheetHeads;
import hornwright.desk.web.view.OnBench;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** How the action feels: touches, balance, bounce; and one key from the side. */
public final class FeelPages {
    private final Desk desk;

    public FeelPages(Desk desk) {
        this.desk = desk;
    }

    public void routes(RoutesConfig routes) {
        routes.get("/horn/{id}/feel", this::feel);
        routes.get("/horn/{id}/closing", this::closing);
        routes.post("/horn/{id}/closing/pads", this::pads);
        routes.get("/horn/{id}/lever/{key}", this::lever);
        routes.get("/horn/{id}/lever/{key}/sheet.pdf", this::sheet);
        routes.post("/horn/{id}/lever/{key}/counted", this::counted);
    }

    /** Bounces of this key counted by ear, one number for each time it was let go. */
    private void counted(Context context) {
        OnBench bench = desk.bench(context);
        Key key = key(context, bench);
        String typed = Desk.field(context, "counts");
        if (!typed.matches("\\d{1,2}([ ,;]+\\d{1,2}){0,19}")) {
            throw new Refusal(422, "Write how often it came back each time, like 3 3 2; this reads \"" + typed + "\".");
        }
        List<Integer> counts =
                Stream.of(typed.split("[ ,;]+")).map(Integer::valueOf).toList();
        try {
            Desk.kept(new TestMaterial(desk.shop())
                    .counted(
                            Desk.form(context),
                            bench.job(),
                            key.id(),
                            desk.later().underFoot(bench.job(), key),
                            counts));
        } catch (BadInput unclear) {
            throw new Refusal(422, unclear.faults().getFirst().what());
        }
        Back.to(context, "/materials#tests");
    }

    private void closing(Context context) {
        OnBench bench = desk.bench(context);
        Map<PadClass, List<SeatAnswer>> ifAll = new EnumMap<>(PadClass.class);
        for (PadClass one : PadClass.values()) {
            ifAll.put(one, desk.later().seatsIfAll(bench.job(), one));
        }
        ClosingRows rows = new ClosingRows(
                bench, desk.later().seats(bench.job()), desk.later().allSeats(bench.job()), ifAll);
        desk.answer(context, "closing", rows.page(desk.frame(context, bench, "Closing", "closing")));
    }

    /** The class of every pad that has none of its own. */
    private void pads(Context context) {
        OnBench bench = desk.bench(context);
        new PadClassForm(desk).settle(context, bench, null);
        Back.to(context, bench.address("closing") + "#classes");
    }

    private void lever(Context context) {
        OnBench bench = desk.bench(context);
        Key key = key(context, bench);
        String title = OnBench.capital(key.name().display()) + " from the side";
        desk.answer(context, "lever", rows(bench, key).page(desk.frame(context, bench, title, "feel")));
    }

    private void sheet(Context context) {
        OnBench bench = desk.bench(context);
        Key key = key(context, bench);
        byte[] pdf = rows(bench, key).sheet(SheetHeads.of(desk, bench)).pdf(SheetHeads.size(context));
        context.contentType("application/pdf");
        context.header("Content-Disposition", "inline; filename=\"lever-" + key.id() + ".pdf\"");
        context.result(pdf);
    }

    private LeverRows rows(OnBench bench, Key key) {
        return new LeverRows(
                bench,
                key,
                desk.later().feel(bench.job()),
                desk.later().bounce(bench.job(), key.id()),
                desk.later().seats(bench.job()),
                desk.shop().house().seq());
    }

    private static Key key(Context context, OnBench bench) {
        String id = context.pathParam("key");
        return bench.keywork()
                .keys()
                .find(id)
                .orElseThrow(() -> Refusal.notFound("This horn has no key \"%s\".".formatted(id)));
    }

    private void feel(Context context) {
        OnBench bench = desk.bench(context);
        FeelRows rows =
                new FeelRows(bench, desk.later().feel(bench.job()), desk.later().bounce(bench.job()));
        desk.answer(context, "feel", rows.page(desk.frame(context, bench, "Feel", "feel")));
    }
}
