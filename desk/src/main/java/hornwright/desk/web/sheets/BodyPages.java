package hornwright.desk.web.sheets;

import hornwright.bench.horn.Position;
import hornwright.bench.horn.Word;
import hornwright.bench.sheet.SheetAsked;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.PinAccess;
import hornwright.bench.survey.PinChoice;
import hornwright.bench.survey.PinSort;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import hornwright.desk.drawing.Showing;
import hornwright.desk.drawing.Spot;
import hornwright.desk.drawing.Standing;
import hornwright.desk.drawing.UnrolledHorn;
import hornwright.desk.units.Typed;
import hornwright.desk.use.RecordReading;
import hornwright.desk.use.WithdrawReading;
import hornwright.desk.web.page.Back;
import hornwright.desk.web.page.Desk;
import hornwright.desk.web.page.Refusal;
import hornwright.desk.web.page.Units;
import hornwright.desk.web.view.OnBench;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Pins on the drawing: dents, cracks, corrosion, old solder, lifted rings, missing stones. */
public final class BodyPages {
    private final Desk desk;
    private final ConcurrentHashMap<String, UnrolledHorn> drawn = new ConcurrentHashMap<>();

    public BodyPages(Desk desk) {
        this.desk = desk;
    }

    public void routes(RoutesConfig routes) {
        routes.get("/horn/{id}/body", context -> show(context, desk.bench(context), ""));
        routes.post("/horn/{id}/pins", this::add);
        routes.post("/horn/{id}/pins/choice", this::settle);
    }

    private void show(Context context, OnBench bench, String fault) {
        UnrolledHorn horn = horn(bench);
        String tin = horn.screen(place -> new Showing.Shown(place.asBuilt().material(), Standing.AS_BUILT));
        desk.answer(
                context,
                "body",
                new BodyRows(bench, SheetAsked.of(desk.plans().inputs(bench.job())))
                        .page(desk.frame(context, bench, "Body", "body"), horn, tin, Desk.fresh(), fault));
    }

    private UnrolledHorn horn(OnBench bench) {
        return drawn.computeIfAbsent(bench.keywork().id(), none -> UnrolledHorn.of(bench.keywork()));
    }

    private void add(Context context) {
        OnBench bench = desk.bench(context);
        Optional<PinSort> sort = word(PinSort.values(), Desk.field(context, "sort"));
        Optional<Position> at = spot(context, bench);
        if (sort.isEmpty()
                || at.isEmpty()
                || !(Units.length(context, Desk.field(context, "size")) instanceof Typed.Amount size)) {
            context.status(422);
            show(context, bench, "Say what it is, near what, and how long it is, like 14 mm.");
            return;
        }
        Observed.Pin pin = new Observed.Pin(
                sort.get(),
                at.get().atMm(),
                at.get().angleDeg(),
                Math.abs(size.value().doubleValue()),
                clock(Desk.field(context, "clock")),
                word(PinAccess.values(), Desk.field(context, "access")).orElse(PinAccess.OUTSIDE),
                word(PinChoice.values(), Desk.field(context, "choice")).orElse(PinChoice.LOOK));
        String id = "pin." + Long.toString(bench.history().seq() + 1, 36);
        keep(context, bench, id, pin);
        Back.to(context, bench.address("body"));
    }

    /** Settles what is done about a pin, or takes it off the drawing. */
    private void settle(Context context) {
        OnBench bench = desk.bench(context);
        Reading reading = bench.job()
                .readings()
                .find(Desk.field(context, "reading"))
                .orElseThrow(() -> Refusal.notFound("This pin is no longer there; load the page again."));
        if (!(reading.observed() instanceof Observed.Pin pin)) {
            throw new Refusal(422, "That reading is no pin.");
        }
        if (Desk.field(context, "act").equals("remove")) {
            Desk.kept(new WithdrawReading(desk.shop())
                    .withdraw(bench.id(), Desk.form(context), reading.id(), "taken off the drawing"));
        } else {
            PinChoice choice = word(PinChoice.values(), Desk.field(context, "choice"))
                    .orElseThrow(() -> new Refusal(422, "Say what is done about it."));
            keep(
                    context,
                    bench,
                    reading.of(),
                    new Observed.Pin(
                            pin.sort(), pin.atMm(), pin.angleDeg(), pin.sizeMm(), pin.clock(), pin.access(), choice));
        }
        Back.to(context, bench.address("body"));
    }

    private void keep(Context context, OnBench bench, String id, Observed.Pin pin) {
        Desk.kept(new RecordReading(desk.shop())
                .record(bench.id(), Desk.form(context), RecordReading.Typed.of(ReadingKind.PIN, id, "", pin, "")));
    }

    /** Where it was set: on the drawing, else near something with a name and so far beside it. */
    private Optional<Position> spot(Context context, OnBench bench) {
        Optional<Double> x = number(Desk.field(context, "x"));
        Optional<Double> y = number(Desk.field(context, "y"));
        if (x.isPresent() && y.isPresent()) {
            return Optional.of(horn(bench).sheet().position(new Spot(x.get(), y.get())));
        }
        double along = number(Desk.field(context, "along")).orElse(0.0);
        double round = number(Desk.field(context, "round")).orElse(0.0);
        double length = bench.keywork().tube().lengthMm();
        return BodyRows.spot(bench.keywork(), Desk.field(context, "near"))
                .map(near -> new Position(
                        Math.clamp(near.atMm() + along, 0, length), Math.IEEEremainder(near.angleDeg() + round, 360)));
    }

    private static @Nullable Double clock(String typed) {
        return number(typed).filter(clock -> clock > 0 && clock <= 12).orElse(null);
    }

    private static Optional<Double> number(String typed) {
        return typed.matches("[-−+]?\\d{1,4}([.,]\\d{1,3})?")
                ? Optional.of(Double.parseDouble(typed.replace(',', '.').replace('−', '-')))
                : Optional.empty();
    }

    private static <W extends Enum<W> & Word> Optional<W> word(W[] values, String said) {
        return Stream.of(values).filter(value -> value.word().equals(said)).findFirst();
    }
}
