package hornwright.desk.web.handover;

import hornwright.bench.plan.settled.RecheckDay;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.survey.Decision;
import hornwright.desk.journal.Blob;
import hornwright.desk.paper.HandOver;
import hornwright.desk.paper.HandOverWords;
import hornwright.desk.use.Decide;
import hornwright.desk.use.KeepFile;
import hornwright.desk.web.page.Back;
import hornwright.desk.web.page.Desk;
import hornwright.desk.web.page.Refusal;
import hornwright.desk.web.page.SheetHeads;
import hornwright.desk.web.view.Next;
import hornwright.desk.web.view.OnBench;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;

/** The horn goes back: what was done in plain words, on the page and on paper, and the paper kept as it was given. */
public final class HandOverPages {
    private final Desk desk;

    public HandOverPages(Desk desk) {
        this.desk = desk;
    }

    public void routes(RoutesConfig routes) {
        routes.get("/horn/{id}/handover", context -> show(context, desk.bench(context), ""));
        routes.get("/horn/{id}/handover/sheet.pdf", this::print);
        routes.get("/horn/{id}/handover/signed.pdf", this::signed);
        routes.post("/horn/{id}/handover", this::sign);
    }

    private void show(Context context, OnBench bench, String fault) {
        HandOverRows rows = new HandOverRows(bench);
        LocalDate recheck = proposed(bench);
        RecheckDay day = rows.recheck(LocalDate.now(ZoneId.systemDefault()), rules());
        desk.answer(
                context,
                "handover",
                new HandOverPage(
                        desk.frame(context, bench, "Hand-over", "handover"),
                        Next.of(bench),
                        bench.id(),
                        bench.history().seq(),
                        Desk.fresh(),
                        sheet(bench, recheck),
                        HeightComb.of(bench),
                        rows.heights(),
                        rows.open(),
                        recheck.toString(),
                        rows.proposed(day, desk.later().settled(bench.job())),
                        fault,
                        rows.signed()));
    }

    private HandOver sheet(OnBench bench, LocalDate recheck) {
        return HandOverWords.of(bench.keywork(), bench.job(), bench.plan(), SheetHeads.of(desk, bench), recheck);
    }

    private LocalDate proposed(OnBench bench) {
        return bench.job().decisions().get("hand-over") instanceof Decision.HandedOver handed
                ? LocalDate.parse(handed.recheck())
                : new HandOverRows(bench)
                        .recheck(LocalDate.now(ZoneId.systemDefault()), rules())
                        .on();
    }

    private ShopRules rules() {
        return desk.shop().house().state().measuredRules();
    }

    private void print(Context context) {
        OnBench bench = desk.bench(context);
        answer(context, sheet(bench, proposed(bench)).pdf(SheetHeads.size(context)));
    }

    /** Makes the paper from the horn as it stands, keeps it, and notes which edit it was made from. */
    private void sign(Context context) {
        OnBench bench = desk.bench(context);
        Optional<LocalDate> recheck = date(Desk.field(context, "recheck"));
        if (recheck.isEmpty()) {
            context.status(422);
            show(context, bench, "Say the day it is looked at again like 2026-12-25.");
            return;
        }
        byte[] paper = sheet(bench, recheck.get()).pdf(SheetHeads.size(context));
        Blob kept = new KeepFile(desk.shop()).keep(paper, "application/pdf");
        Decision handed = new Decision.HandedOver(
                bench.history().seq(), kept.sha256(), recheck.get().toString(), "handed over to the owner");
        Desk.kept(new Decide(desk.shop()).decide(bench.id(), Desk.form(context), handed));
        Back.to(context, bench.address("handover") + "#signed");
    }

    /** The paper exactly as the owner got it. */
    private void signed(Context context) {
        OnBench bench = desk.bench(context);
        if (!(bench.job().decisions().get("hand-over") instanceof Decision.HandedOver handed)) {
            throw Refusal.notFound("This horn has not been handed over yet.");
        }
        byte[] paper = new KeepFile(desk.shop())
                .read(handed.paper())
                .orElseThrow(() -> Refusal.notFound("The paper of this hand-over is not in the store."));
        answer(context, paper);
    }

    private static void answer(Context context, byte[] pdf) {
        context.contentType("application/pdf");
        context.header("Content-Disposition", "inline; filename=\"hand-over.pdf\"");
        context.result(pdf);
    }

    private static Optional<LocalDate> date(String text) {
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeException none) {
            return Optional.empty();
        }
    }
}
