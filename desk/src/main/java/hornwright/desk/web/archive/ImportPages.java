package hornwright.desk.web.archive;

import hornwright.bench.archive.Observation;
import hornwright.bench.archive.Witness;
import hornwright.desk.use.EvidenceColumn;
import hornwright.desk.use.ImportEvidence;
import hornwright.desk.use.Saved;
import hornwright.desk.web.page.Back;
import hornwright.desk.web.page.Desk;
import hornwright.desk.web.page.Uploads;
import hornwright.desk.web.view.Clocks;
import hornwright.desk.web.view.PlacePanel;
import hornwright.desk.web.view.Written;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A table of looks is tried first and brought in after, as one edit. */
public final class ImportPages {
    private static final int SHOWN_FAULTS = 100;
    private static final int SHOWN_LOOKS = 12;

    private final Desk desk;

    public ImportPages(Desk desk) {
        this.desk = desk;
    }

    public void routes(RoutesConfig routes) {
        routes.get("/archive/import", context -> show(context, "", "", null));
        routes.post("/archive/import", this::posted);
    }

    private void posted(Context context) {
        String typed = context.formParam("text") == null ? "" : String.valueOf(context.formParam("text"));
        String text = Uploads.of(context, "file").stream()
                .findFirst()
                .map(bytes -> new String(bytes, StandardCharsets.UTF_8))
                .orElse(typed);
        String maker = Desk.field(context, "maker");
        boolean same = text.equals(typed);
        ImportEvidence verb = new ImportEvidence(desk.shop());
        ImportEvidence.Trial trial = verb.attempt(text, same ? chosen(context) : Map.of(), maker);
        if (!Desk.field(context, "act").equals("bring") || !trial.isClean()) {
            context.status(trial.isClean() ? 200 : 422);
            show(context, text, maker, trial);
            return;
        }
        Optional<Saved> saved = verb.bringIn(Desk.form(context), "a table", trial);
        String seq = saved.map(Desk::kept).map(kept -> "?saved=" + kept.seq()).orElse("?known=1");
        Back.to(context, "/archive/import" + seq);
    }

    private static Map<EvidenceColumn, Integer> chosen(Context context) {
        Map<EvidenceColumn, Integer> columns = new EnumMap<>(EvidenceColumn.class);
        for (EvidenceColumn column : EvidenceColumn.values()) {
            String at = Desk.field(context, "column-" + column.word());
            if (at.matches("\\d{1,2}")) {
                columns.put(column, Integer.parseInt(at));
            }
        }
        return columns;
    }

    private void show(Context context, String text, String maker, ImportEvidence.@Nullable Trial trial) {
        long saved = saved(context);
        desk.answer(
                context,
                "import",
                new ImportPage(
                        desk.frame(context, "Evidence from a table"),
                        said(context, saved),
                        saved,
                        desk.shop().archive().seq(),
                        Desk.fresh(),
                        text,
                        maker,
                        trial != null,
                        trial == null ? "" : outcome(trial),
                        trial == null ? List.of() : columns(trial),
                        trial == null ? List.of() : faults(trial),
                        trial == null ? List.of() : looks(trial),
                        trial != null && trial.isClean() && !trial.brought().isEmpty()));
    }

    private long saved(Context context) {
        String seq = context.queryParam("saved");
        boolean known = seq != null
                && seq.matches("[1-9]\\d{0,8}")
                && Long.parseLong(seq) <= desk.shop().archive().seq();
        return known ? Long.parseLong(seq) : 0;
    }

    private String said(Context context, long saved) {
        if (saved > 0) {
            var posted = desk.shop().archive().edits().get((int) saved - 1);
            return "Saved " + Clocks.time(posted.at()) + ": " + posted.edit().inWords() + ".";
        }
        return context.queryParam("known") != null
                ? "All of it is in the archive already."
                : context.queryParam("undone") != null ? "Taken back. The archive is as it was." : "";
    }

    private static String outcome(ImportEvidence.Trial trial) {
        if (!trial.isClean()) {
            int faults = trial.faults().size();
            return (faults == 1 ? "One thing is" : faults + " things are") + " to be mended. Nothing was written.";
        }
        return "%d rows are understood: %d new horns, %d new looks, %d known already. Nothing is written yet."
                .formatted(trial.rows(), trial.horns().size(), trial.looks().size(), trial.known());
    }

    private static List<ImportPage.Column> columns(ImportEvidence.Trial trial) {
        return trial.head().isEmpty()
                ? List.of()
                : Stream.of(EvidenceColumn.values())
                        .map(column -> new ImportPage.Column(
                                column.word(), column.meaning(), column.isNeeded(), heads(trial, column)))
                        .toList();
    }

    private static List<PlacePanel.Option> heads(ImportEvidence.Trial trial, EvidenceColumn column) {
        List<PlacePanel.Option> heads = new ArrayList<>();
        Integer chosen = trial.columns().get(column);
        for (int i = 0; i < trial.head().size(); i++) {
            heads.add(new PlacePanel.Option("" + i, trial.head().get(i), chosen != null && chosen == i));
        }
        return heads;
    }

    private static List<ImportPage.Fault> faults(ImportEvidence.Trial trial) {
        return trial.faults().stream()
                .limit(SHOWN_FAULTS)
                .map(fault -> new ImportPage.Fault("" + fault.line(), fault.column(), fault.what(), fault.example()))
                .toList();
    }

    private static List<ImportPage.Look> looks(ImportEvidence.Trial trial) {
        return trial.isClean()
                ? trial.looks().stream()
                        .limit(SHOWN_LOOKS)
                        .map(look -> look(trial, look))
                        .toList()
                : List.of();
    }

    private static ImportPage.Look look(ImportEvidence.Trial trial, Observation look) {
        String horn = trial.horns().stream()
                .filter(one -> one.id().equals(look.witness()))
                .findFirst()
                .map(Witness::serial)
                .map(String::valueOf)
                .orElse(look.witness());
        String thickness =
                look.thicknessAtLeastMm() == null ? "" : "at least " + Written.plain(look.thicknessAtLeastMm()) + " mm";
        return new ImportPage.Look(
                horn,
                look.place(),
                look.material(),
                String.join(
                        ", ",
                        Stream.of(
                                        thickness,
                                        look.colour() == null ? "" : look.colour(),
                                        look.origin().id())
                                .filter(word -> !word.isEmpty())
                                .toList()));
    }
}
