package hornwright.desk.web.measure;

import hornwright.bench.plan.measured.ReadNumbers;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.Unit;
import hornwright.desk.web.page.Back;
import hornwright.desk.web.page.Desk;
import hornwright.desk.web.page.Live;
import hornwright.desk.web.page.Units;
import hornwright.desk.web.view.MeasureSheet;
import hornwright.desk.web.view.Next;
import hornwright.desk.web.view.OnBench;
import hornwright.desk.web.view.PlacePanel;
import hornwright.desk.web.view.Settles;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The measuring grid: what is typed is kept field by field, and what would follow is shown while typing. */
public final class MeasurePages {
    private final Desk desk;

    public MeasurePages(Desk desk) {
        this.desk = desk;
    }

    public void routes(RoutesConfig routes) {
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
                        Settles.sheet(bench, sheet),
                        sheet.wordy(),
                        instruments(context, sheet),
                        sheet.takesLengths() ? Units.choices(context) : List.of(),
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
        TypedReadings typed = new TypedReadings(desk, context);
        answer(
                context,
                bench,
                typed.keep(bench),
                typed.fields().stream().map(ReadingForm::name).toList());
    }

    private void answer(
            Context context, OnBench before, Map<String, MeasureGrid.Typing> troubles, List<String> fields) {
        OnBench after = desk.bench(before.id());
        if (Live.asked(context)) {
            desk.answer(
                    context, "measure-live", MeasureLive.of(before, after, sheet(context), troubles, fields, false));
        } else if (troubles.isEmpty()) {
            Back.to(
                    context,
                    after.address("measure") + "?sheet=" + sheet(context).word() + also(context));
        } else {
            context.status(422);
            show(context, after, troubles);
        }
    }

    /** What the plan would be with this reading; nothing is kept. */
    private void preview(Context context) {
        OnBench bench = desk.bench(context);
        OnBench ahead = new TypedReadings(desk, context)
                .typing(bench)
                .map(reading -> desk.with(bench, desk.plans().ifRead(bench.job(), reading)))
                .orElse(bench);
        desk.answer(context, "measure-live", MeasureLive.of(bench, ahead, sheet(context), Map.of(), List.of(), true));
    }

    /** The usual instrument of the sheet and the others the shop has a rule for; none where nothing is measured. */
    private List<PlacePanel.Option> instruments(Context context, MeasureSheet sheet) {
        ReadingKind kind = sheet.columns().getFirst().kind();
        Unit unit = kind.unit();
        if (unit == null) {
            return List.of();
        }
        String with = Objects.requireNonNullElse(with(context), kind.usualInstrument());
        List<String> known = ReadNumbers.instruments(desk.shop().house().state().rules(), unit);
        return Stream.concat(Stream.of(kind.usualInstrument()), known.stream())
                .distinct()
                .map(one -> new PlacePanel.Option(one, one, one.equals(with)))
                .toList();
    }

    /** The next fields are read with the same instrument. */
    private static String also(Context context) {
        String with = with(context);
        return with == null ? "" : "&with=" + URLEncoder.encode(with, StandardCharsets.UTF_8);
    }

    private static @Nullable String with(Context context) {
        String form = context.formParam("with");
        return form == null ? context.queryParam("with") : form;
    }
}
