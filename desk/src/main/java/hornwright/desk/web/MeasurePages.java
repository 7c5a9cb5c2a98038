package hornwright.desk.web;

import hornwright.bench.survey.Reading;
import hornwright.desk.units.LengthUnit;
import hornwright.desk.use.Form;
import hornwright.desk.use.RecordReading;
import hornwright.desk.use.Saved;
import hornwright.desk.use.WithdrawReading;
import hornwright.desk.web.view.MeasureGrid;
import hornwright.desk.web.view.MeasureLive;
import hornwright.desk.web.view.MeasurePage;
import hornwright.desk.web.view.MeasureSheet;
import hornwright.desk.web.view.Next;
import hornwright.desk.web.view.OnBench;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** The measuring grid: what is typed is kept field by field, and what would follow is shown while typing. */
final class MeasurePages {
    private final Desk desk;

    MeasurePages(Desk desk) {
        this.desk = desk;
    }

    void routes(RoutesConfig routes) {
        routes.post("/unit", Units::choose);
        routes.get("/horn/{id}/measure", context -> show(context, desk.bench(context), Map.of()));
        routes.post("/horn/{id}/readings", this::record);
        routes.get("/horn/{id}/preview", this::preview);
    }

    private void show(Context context, OnBench bench, Map<String, MeasureGrid.Typing> typings) {
        MeasureSheet sheet = sheet(context);
        MeasureGrid grid = new MeasureGrid(bench, sheet, typings);
        desk.answer(
                context,
                "measure",
                new MeasurePage(
                        desk.frame(context, bench, sheet.title(), "measure"),
                        bench.id(),
                        bench.history().seq(),
                        Next.of(bench),
                        MeasureGrid.tabsWithLinks(bench, sheet),
                        sheet.word(),
                        sheet.title(),
                        sheet.how(),
                        sheet.wordy(),
                        Units.choices(context),
                        sheet.headings(Units.of(context).symbol()),
                        sheet.results().stream()
                                .map(name -> OnBench.capital(name.label()))
                                .toList(),
                        grid.rows(),
                        grid.troubles(),
                        Desk.fresh()));
    }

    private static MeasureSheet sheet(Context context) {
        String form = context.formParam("sheet");
        return MeasureSheet.named(form != null ? form : context.queryParam("sheet"));
    }

    /** Keeps every field whose text has changed; what is not understood stays in its field with a sentence. */
    private void record(Context context) {
        OnBench bench = desk.bench(context);
        Map<String, MeasureGrid.Typing> troubles = new LinkedHashMap<>();
        Form form = Desk.form(context);
        int count = 0;
        for (ReadingForm field : fields(context)) {
            Optional<Reading> before = before(bench, field);
            if (field.text().equals(before.map(MeasureGrid::typed).orElse(""))) {
                continue;
            }
            Form own = new Form(form.expectedSeq() + count, form.hand(), form.key() + "-" + count);
            String fault = keep(bench, field, before, own, Units.of(context));
            if (fault.isEmpty()) {
                count++;
            } else {
                troubles.put(field.name(), new MeasureGrid.Typing(field.text(), fault));
            }
        }
        answer(context, bench, troubles);
    }

    private void answer(Context context, OnBench before, Map<String, MeasureGrid.Typing> troubles) {
        OnBench after = desk.bench(before.id());
        if (Live.asked(context)) {
            desk.answer(
                    context,
                    "measure-live",
                    MeasureLive.of(before, after, sheet(context), troubles, fieldNames(context), false));
        } else if (troubles.isEmpty()) {
            Back.to(
                    context,
                    after.address("measure") + "?sheet=" + sheet(context).word());
        } else {
            context.status(422);
            show(context, after, troubles);
        }
    }

    private String keep(OnBench bench, ReadingForm field, Optional<Reading> before, Form form, LengthUnit usual) {
        if (field.text().isEmpty()) {
            Desk.kept(new WithdrawReading(desk.shop())
                    .withdraw(bench.id(), form, before.orElseThrow().id(), "taken out of the grid"));
            return "";
        }
        return switch (field.read(bench, usual)) {
            case ReadingForm.Outcome.Unclear unclear -> unclear.sentence();
            case ReadingForm.Outcome.Reads reads -> {
                Saved saved = new RecordReading(desk.shop()).record(bench.id(), form, reads.typed());
                Desk.kept(saved);
                yield "";
            }
        };
    }

    /** What the plan would be with this reading; nothing is kept. */
    private void preview(Context context) {
        OnBench bench = desk.bench(context);
        String name = Objects.requireNonNullElse(context.queryParam("name"), "");
        String text = Objects.requireNonNullElse(context.queryParam("typed"), "");
        OnBench ahead = ReadingForm.of(name, text)
                .filter(field -> !field.text().isEmpty())
                .filter(field -> field.read(bench, Units.of(context)) instanceof ReadingForm.Outcome.Reads)
                .map(field -> {
                    ReadingForm.Outcome.Reads reads = (ReadingForm.Outcome.Reads) field.read(bench, Units.of(context));
                    return desk.with(bench, desk.plans().ifRead(bench.job(), ReadingForm.ahead(reads.typed(), bench)));
                })
                .orElse(bench);
        desk.answer(context, "measure-live", MeasureLive.of(bench, ahead, sheet(context), Map.of(), List.of(), true));
    }

    private static List<ReadingForm> fields(Context context) {
        return context.formParamMap().entrySet().stream()
                .filter(entry -> !entry.getValue().isEmpty())
                .flatMap(
                        entry -> ReadingForm.of(entry.getKey(), entry.getValue().getFirst()).stream())
                .toList();
    }

    private static List<String> fieldNames(Context context) {
        return fields(context).stream().map(ReadingForm::name).toList();
    }

    private static Optional<Reading> before(OnBench bench, ReadingForm field) {
        return bench.job().readings().current().stream()
                .filter(reading -> reading.kind() == field.kind()
                        && reading.of().equals(field.of())
                        && reading.point().equals(field.point()))
                .reduce((first, second) -> second);
    }
}
