package hornwright.desk.web.measure;

import hornwright.bench.job.Posted;
import hornwright.bench.job.ReadingTaken;
import hornwright.bench.job.Undone;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.Unit;
import hornwright.desk.units.Caliper;
import hornwright.desk.units.LengthUnit;
import hornwright.desk.use.RecordReading;
import hornwright.desk.use.Undo;
import hornwright.desk.web.page.Back;
import hornwright.desk.web.page.Desk;
import hornwright.desk.web.page.Live;
import hornwright.desk.web.page.Refusal;
import hornwright.desk.web.page.Units;
import hornwright.desk.web.page.Words;
import hornwright.desk.web.view.Clocks;
import hornwright.desk.web.view.MeasureSheet;
import hornwright.desk.web.view.Next;
import hornwright.desk.web.view.OnBench;
import hornwright.desk.web.view.Settles;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** One point at a time, for a horn in one hand and a caliper in the other. */
public final class PointPages {
    /** Further from the pattern than this share, what an instrument sent is asked about (bench judgement). */
    private static final double FAR = 0.25;

    private final Desk desk;

    public PointPages(Desk desk) {
        this.desk = desk;
    }

    public void routes(RoutesConfig routes) {
        routes.get("/horn/{id}/point", this::show);
        routes.post("/horn/{id}/point", this::record);
    }

    private void show(Context context) {
        OnBench bench = desk.bench(context);
        Points points = points(context, bench);
        String asked = Objects.requireNonNullElse(context.queryParam("n"), "");
        int n = asked.matches("\\d{1,4}") ? Integer.parseInt(asked) : points.open();
        answer(context, bench, points, n, "", "", "");
    }

    private static Points points(Context context, OnBench bench) {
        String form = context.formParam("sheet");
        return new Points(bench, MeasureSheet.named(form != null ? form : context.queryParam("sheet")));
    }

    private void record(Context context) {
        OnBench bench = desk.bench(context);
        Points points = points(context, bench);
        String n = Desk.field(context, "n");
        if (!n.matches("\\d{1,4}")) {
            throw new Refusal(422, "Say which point was measured, by its number.");
        }
        if (Desk.field(context, "act").equals("back")) {
            takeBack(context, bench, points, Integer.parseInt(n));
        } else {
            keep(context, bench, points, Integer.parseInt(n));
        }
    }

    private void keep(Context context, OnBench bench, Points points, int n) {
        String value = Desk.field(context, "value");
        boolean sent = Desk.field(context, "burst").equals("yes");
        Optional<Caliper> caliper = Calipers.of(context).filter(known -> sent);
        String typed = caliper.map(known -> known.plain(value)).orElse(value);
        LengthUnit unit = caliper.map(Caliper::unit).orElse(Units.of(context));
        ReadingForm field = ReadingForm.of(points.at(n).name(), typed).orElseThrow();
        String kept = points.reading(points.at(n)).map(MeasureGrid::typed).orElse("");
        if (value.isEmpty() || value.equals(kept)) {
            go(context, points, n + 1);
            return;
        }
        switch (field.read(bench, unit)) {
            case ReadingForm.Outcome.Unclear unclear ->
                refused(context, bench, points, n, value, unclear.sentence(), "");
            case ReadingForm.Outcome.Reads reads -> {
                String doubt =
                        sent && !Desk.field(context, "sure").equals(value) ? doubt(bench, points.at(n), reads) : "";
                if (doubt.isEmpty()) {
                    Desk.kept(new RecordReading(desk.shop()).record(bench.id(), Desk.form(context), reads.typed()));
                    go(context, points, n + 1);
                } else {
                    refused(context, bench, points, n, value, doubt, value);
                }
            }
        }
    }

    /** A question when an instrument sent something far from the pattern; a person who typed it meant it. */
    private static String doubt(OnBench bench, Points.Point point, ReadingForm.Outcome.Reads reads) {
        Optional<Double> expected = MeasureGrid.expected(bench, point.column().kind(), point.of());
        return reads.typed().observed() instanceof Observed.Amount amount
                        && expected.isPresent()
                        && Math.abs(amount.value() / expected.get() - 1) > FAR
                ? "The pattern has about %s here. Measure once more, or keep it as it is.".formatted(expected.get())
                : "";
    }

    /** The last reading goes back to what it was before, and the page to its point. */
    private void takeBack(Context context, OnBench bench, Points points, int n) {
        Optional<Posted> last = last(bench);
        if (last.isEmpty()) {
            go(context, points, n - 1);
            return;
        }
        Reading reading = ((ReadingTaken) last.get().edit()).reading();
        MeasureSheet sheet = Objects.requireNonNullElse(MeasureSheet.ofKind(reading.kind()), points.sheet());
        Desk.kept(new Undo(desk.shop())
                .undoOfJob(bench.id(), Desk.form(context), last.get().seq()));
        Points there = new Points(bench, sheet);
        go(context, there, there.of(reading).orElse(n));
    }

    /** The last edit, when it took a reading; what was taken back already is passed over. */
    private static Optional<Posted> last(OnBench bench) {
        return bench.history().edits().reversed().stream()
                .filter(edit ->
                        !(edit.edit() instanceof Undone) && !bench.history().isUndone(edit.seq()))
                .findFirst()
                .filter(edit -> edit.edit() instanceof ReadingTaken);
    }

    private void go(Context context, Points points, int n) {
        OnBench bench = desk.bench(context);
        int to = Math.floorMod(n, points.count());
        if (Live.asked(context)) {
            answer(context, bench, new Points(bench, points.sheet()), to, "", "", "");
        } else {
            Back.to(context, bench.address("point") + "?sheet=" + points.sheet().word() + "&n=" + to);
        }
    }

    private void refused(
            Context context, OnBench bench, Points points, int n, String value, String fault, String sure) {
        context.status(422);
        answer(context, bench, points, n, value, fault, sure);
    }

    private void answer(
            Context context, OnBench bench, Points points, int asked, String value, String fault, String sure) {
        int n = Math.floorMod(asked, points.count());
        Points.Point point = points.at(n);
        Optional<Reading> reading = points.reading(point);
        String base = bench.address("point") + "?sheet=" + points.sheet().word() + "&n=";
        PointPage page = new PointPage(
                desk.frame(context, bench, points.sheet().title(), "point"),
                Next.of(bench),
                bench.id(),
                bench.history().seq(),
                Desk.fresh(),
                points.sheet().word(),
                points.sheet().title(),
                MeasureGrid.tabs(bench, points.sheet()).stream()
                        .map(tab -> tab.at(tab.address().replace("/measure?", "/point?")))
                        .toList(),
                n,
                "%d of %d".formatted(n + 1, points.count()),
                point.where(),
                point.column().heading(),
                symbol(context, point.column().kind().unit()),
                !value.isEmpty() ? value : reading.map(MeasureGrid::typed).orElse(""),
                reading.filter(known -> fault.isEmpty() && known.when() != null)
                        .map(known -> "saved " + Clocks.when(Objects.requireNonNull(known.when()), Instant.now()))
                        .orElse(""),
                reading.isPresent() ? "" : Settles.field(bench, point.column(), point.of()),
                fault,
                sure,
                base + (n + 1) % points.count(),
                base + Math.floorMod(n - 1, points.count()),
                last(bench)
                        .map(edit -> new Words(bench.keywork()).of(edit.edit().inWords()))
                        .orElse(""),
                point.follows(),
                points.figure(point));
        desk.answer(context, Live.asked(context) ? "point-live" : "point", page);
    }

    /** A length is shown in the unit chosen for bare numbers, anything else in its own. */
    private static String symbol(Context context, @Nullable Unit unit) {
        if (unit == null) {
            return "";
        }
        return unit == Unit.MILLIMETRE ? Units.of(context).symbol() : unit.symbol();
    }
}
