package hornwright.desk.web.archive;

import hornwright.bench.archive.Archive;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Voice;
import hornwright.desk.use.ImportYears;
import hornwright.desk.use.Keyworks;
import hornwright.desk.use.Saved;
import hornwright.desk.web.page.Back;
import hornwright.desk.web.page.Desk;
import hornwright.desk.web.page.Uploads;
import hornwright.desk.web.view.Clocks;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A table of serials and years, tried first, then brought in as one edit. */
public final class YearImportPages {
    private final Desk desk;

    public YearImportPages(Desk desk) {
        this.desk = desk;
    }

    public void routes(RoutesConfig routes) {
        routes.get("/archive/years", context -> show(context, "", null));
        routes.post("/archive/years", this::posted);
    }

    private String maker() {
        return desk.shop().archive().state().byMaker().values().stream()
                .findFirst()
                .map(Archive::maker)
                .orElseGet(
                        () -> Keyworks.ofVoice(Voice.ALTO).map(Keywork::maker).orElse(""));
    }

    private void posted(Context context) {
        String typed = context.formParam("text") == null ? "" : String.valueOf(context.formParam("text"));
        String text = Uploads.of(context, "file").stream()
                .findFirst()
                .map(bytes -> new String(bytes, StandardCharsets.UTF_8))
                .orElse(typed);
        ImportYears verb = new ImportYears(desk.shop());
        ImportYears.Trial trial = verb.attempt(text, maker());
        if (!Desk.field(context, "act").equals("bring") || !trial.isClean()) {
            context.status(trial.isClean() ? 200 : 422);
            show(context, text, trial);
            return;
        }
        Optional<Saved> saved = verb.bringIn(Desk.form(context), maker(), trial);
        String at = saved.map(Desk::kept)
                .map(kept -> "?saved=" + Clocks.time(kept.at()))
                .orElse("");
        Back.to(context, "/archive" + at + "#years");
    }

    private void show(Context context, String text, ImportYears.@Nullable Trial trial) {
        desk.answer(
                context,
                "years-import",
                new YearsImportPage(
                        desk.frame(context, "Years from a table"),
                        text,
                        trial == null ? "" : outcome(trial),
                        trial == null
                                ? List.of()
                                : trial.faults().stream()
                                        .limit(100)
                                        .map(one -> new ImportPage.Fault(
                                                "" + one.line(), one.column(), one.what(), one.example()))
                                        .toList(),
                        trial == null
                                ? List.of()
                                : trial.rows().stream()
                                        .limit(100)
                                        .map(row -> new Years.Row(
                                                "" + row.serial(), row.year().inWords(), row.source()))
                                        .toList(),
                        trial != null && trial.isClean() && !trial.rows().isEmpty(),
                        desk.shop().archive().seq(),
                        Desk.fresh()));
    }

    private static String outcome(ImportYears.Trial trial) {
        int faults = trial.faults().size();
        return faults > 0
                ? (faults == 1 ? "One thing is" : faults + " things are") + " to be mended. Nothing was written."
                : "%d rows new or changed, %d known already. Nothing is written yet."
                        .formatted(trial.rows().size(), trial.known());
    }
}
