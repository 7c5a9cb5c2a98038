package hornwright.desk.web;

import hornwright.desk.bag.UnreadableBag;
import hornwright.desk.use.ReceiveArchive;
import hornwright.desk.use.ShareArchive;
import hornwright.desk.web.view.SharePage;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** What leaves the shop for another one, and what comes in. */
final class SharePages {
    private final Desk desk;

    SharePages(Desk desk) {
        this.desk = desk;
    }

    void routes(RoutesConfig routes) {
        routes.get(
                "/archive/share",
                context -> show(
                        context,
                        context.queryParam("undone") == null ? "" : "Taken back. The archive is as it was.",
                        0,
                        "",
                        List.of()));
        routes.get("/archive/share.zip", this::pack);
        routes.post("/archive/receive", this::receive);
    }

    private void show(Context context, String said, long undo, String fault, List<String> conflicts) {
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
                        verb.contentHash().substring(0, 12)));
    }

    private static SharePage.Part part(ShareArchive.Contents of) {
        return new SharePage.Part(
                of.maker(),
                "%d horns, %d looks, %d statements, %d photographs"
                        .formatted(of.horns(), of.looks(), of.statements(), of.photos()),
                "/archive/share.zip?maker=" + URLEncoder.encode(of.maker(), StandardCharsets.UTF_8));
    }

    private void pack(Context context) {
        ShareArchive verb = new ShareArchive(desk.shop());
        String maker = context.queryParam("maker");
        if (verb.contents().stream()
                .noneMatch(one -> maker == null || one.maker().equals(maker))) {
            throw Refusal.notFound("Nothing is known of such horns yet, so there is nothing to pack.");
        }
        context.contentType("application/zip")
                .header("Content-Disposition", "attachment; filename=\"evidence.zip\"")
                .result(verb.pack(maker));
    }

    private void receive(Context context) {
        List<byte[]> files = Uploads.bags(context, "bag");
        if (files.isEmpty()) {
            context.status(422);
            show(context, "", 0, "Choose the file another shop sent: a zip.", List.of());
            return;
        }
        try {
            ReceiveArchive.Outcome outcome =
                    new ReceiveArchive(desk.shop()).receive(Desk.form(context), files.getFirst(), false);
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

    private static String words(ReceiveArchive.Outcome outcome) {
        return outcome.saved().isEmpty()
                ? "Nothing new from %s: %d items are known already.".formatted(outcome.from(), outcome.known())
                : "From %s: %d new, %d changed by their author, %d known already."
                        .formatted(outcome.from(), outcome.fresh(), outcome.changed(), outcome.known());
    }
}
