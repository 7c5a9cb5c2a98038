package hornwright.desk.web.archive;

import hornwright.bench.archive.SerialRange;
import hornwright.desk.bag.Bag;
import hornwright.desk.bag.BagReader;
import hornwright.desk.bag.UnreadableBag;
import hornwright.desk.use.ReceiveArchive;
import hornwright.desk.use.ReceiveSurvey;
import hornwright.desk.use.ShareArchive;
import hornwright.desk.use.ShareSurvey;
import hornwright.desk.use.SharedPart;
import hornwright.desk.use.Shelf;
import hornwright.desk.web.page.Desk;
import hornwright.desk.web.page.Refusal;
import hornwright.desk.web.page.Uploads;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** What leaves the shop for another one, and what comes in. */
public final class SharePages {
    private final Desk desk;

    public SharePages(Desk desk) {
        this.desk = desk;
    }

    public void routes(RoutesConfig routes) {
        routes.get(
                "/archive/share",
                context -> show(
                        context,
                        context.queryParam("undone") == null ? "" : "Taken back. The archive is as it was.",
                        0,
                        "",
                        List.of()));
        routes.get("/archive/share.zip", this::pack);
        routes.get("/archive/survey.zip", this::packSurvey);
        routes.post("/archive/receive", this::receive);
    }

    private void show(Context context, String said, long undo, String fault, List<String> conflicts) {
        show(context, said, undo, fault, conflicts, "");
    }

    private void show(Context context, String said, long undo, String fault, List<String> conflicts, String came) {
        ShareArchive verb = new ShareArchive(desk.shop());
        desk.answer(
                context,
                "share",
                new SharePage(
                        desk.frame(context, "Sharing"),
                        said,
                        undo,
                        desk.shop().archive().seq(),
                        Desk.fresh(),
                        fault,
                        conflicts,
                        verb.contents().stream().map(SharePages::part).toList(),
                        ShareRows.cut(desk.shop().archive().state().byMaker().values()),
                        ShareRows.horns(new Shelf(desk.shop()).all()),
                        came,
                        verb.contentHash().substring(0, 12)));
    }

    private static SharePage.Part part(ShareArchive.Contents of) {
        return new SharePage.Part(
                of.maker(),
                "%d horns, %d looks, %d statements, %d claims on what fits, %d searches, asides and years, %d photographs"
                        .formatted(of.horns(), of.looks(), of.statements(), of.fittings(), of.other(), of.photos()),
                "/archive/share.zip?maker=" + URLEncoder.encode(of.maker(), StandardCharsets.UTF_8));
    }

    private void pack(Context context) {
        ShareArchive verb = new ShareArchive(desk.shop());
        SharedPart part = new SharedPart(
                asked(context, "maker"), asked(context, "place"), serials(context), asked(context, "origin"));
        if (verb.contents(part).isEmpty()) {
            throw Refusal.notFound("Nothing is known of that, so there is nothing to pack.");
        }
        zip(context, "evidence", verb.pack(part, context.queryParam("originals") != null));
    }

    private void packSurvey(Context context) {
        String horn = Objects.requireNonNullElse(asked(context, "horn"), "");
        String id = desk.bench(horn).id();
        zip(context, "survey", new ShareSurvey(desk.shop()).pack(id, context.queryParam("originals") != null));
    }

    private static void zip(Context context, String name, byte[] bytes) {
        context.contentType("application/zip")
                .header("Content-Disposition", "attachment; filename=\"" + name + ".zip\"")
                .result(bytes);
    }

    private static @Nullable String asked(Context context, String name) {
        String typed = context.queryParam(name);
        return typed == null || typed.isBlank() ? null : typed.strip();
    }

    private static @Nullable SerialRange serials(Context context) {
        String from = asked(context, "from");
        String to = asked(context, "to");
        if (from == null && to == null) {
            return null;
        }
        String low = from == null ? "0" : from;
        String high = to == null ? "999999999" : to;
        if (!low.matches("\\d{1,9}") || !high.matches("\\d{1,9}") || Long.parseLong(low) > Long.parseLong(high)) {
            throw new Refusal(422, "Serials are digits, the lower first, like 38000 and 45000.");
        }
        return new SerialRange(Long.parseLong(low), Long.parseLong(high));
    }

    private void receive(Context context) {
        List<byte[]> files = Uploads.bags(context, "bag");
        if (files.isEmpty()) {
            context.status(422);
            show(context, "", 0, "Choose the file another shop sent: a zip.", List.of());
            return;
        }
        try {
            Bag bag = BagReader.read(files.getFirst());
            if (ReceiveSurvey.isSurvey(bag)) {
                receiveSurvey(context, bag);
                return;
            }
            ReceiveArchive.Outcome outcome = new ReceiveArchive(desk.shop()).receive(Desk.form(context), bag, false);
            long seq = outcome.saved().map(Desk::kept).map(kept -> kept.seq()).orElse(0L);
            show(context, words(outcome), seq, "", outcome.conflicts());
        } catch (UnreadableBag bag) {
            context.status(422);
            show(
                    context,
                    "",
                    0,
                    String.join(" ", bag.reasons().stream().limit(20).toList()),
                    List.of());
        }
    }

    private void receiveSurvey(Context context, Bag bag) {
        ReceiveSurvey.Outcome outcome = new ReceiveSurvey(desk.shop()).receive(Desk.form(context), bag, false);
        String said = outcome.job().isEmpty()
                ? ""
                : outcome.known()
                        ? "Nothing new from %s: the survey of %s is here already."
                                .formatted(outcome.from(), outcome.title())
                        : "From %s: the survey of %s, now a horn of this shelf."
                                .formatted(outcome.from(), outcome.title());
        List<String> conflicts = outcome.conflict().isEmpty() ? List.of() : List.of(outcome.conflict());
        show(
                context,
                said,
                0,
                "",
                conflicts,
                outcome.job().map(id -> "/horn/" + id).orElse(""));
    }

    private static String words(ReceiveArchive.Outcome outcome) {
        return outcome.saved().isEmpty()
                ? "Nothing new from %s: %d items are known already.".formatted(outcome.from(), outcome.known())
                : "From %s: %d new, %d changed by their author, %d known already."
                        .formatted(outcome.from(), outcome.fresh(), outcome.changed(), outcome.known());
    }
}
