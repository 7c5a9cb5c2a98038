package hornwright.desk.web.fits;

import hornwright.bench.archive.FitKind;
import hornwright.bench.horn.Owner;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.PlaceKind;
import hornwright.bench.plan.PlannedPlace;
import hornwright.desk.web.feel.LeverPage;
import hornwright.desk.web.feel.TryRows;
import hornwright.desk.web.page.Desk;
import hornwright.desk.web.page.Refusal;
import hornwright.desk.web.view.Figure;
import hornwright.desk.web.view.FitLine;
import hornwright.desk.web.view.FitRows;
import hornwright.desk.web.view.OnBench;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;

/** One place whose part is missing, or might be: what fits there, and what else could lie there. */
public final class InsteadPages {
    private final Desk desk;

    public InsteadPages(Desk desk) {
        this.desk = desk;
    }

    public void routes(RoutesConfig routes) {
        routes.get("/horn/{id}/instead/{place}", this::show);
    }

    private void show(Context context) {
        OnBench bench = desk.bench(context);
        String id = context.pathParam("place");
        Place place = bench.keywork()
                .places()
                .find(id)
                .orElseThrow(() -> Refusal.notFound("This horn has no place \"%s\".".formatted(id)));
        String name = OnBench.capital(place.display());
        Optional<InsteadRows> rows =
                desk.later().instead(bench.job(), id).map(answer -> new InsteadRows(bench, answer));
        Optional<FitKind> kind = FitKind.at(place.kind());
        List<FitLine> fits = fits(bench, place);
        List<LeverPage.Try> tries = tries(bench, place);
        List<Figure> wires = wires(bench, place);
        boolean reckoned = rows.isPresent() || !tries.isEmpty() || !wires.isEmpty();
        desk.answer(
                context,
                "instead",
                new InsteadPage(
                        desk.frame(context, bench, name + ": what instead", "keep"),
                        bench.id(),
                        id,
                        name,
                        state(bench.plan().place(id)),
                        bench.placeAddress(id),
                        kind.isPresent() || !fits.isEmpty(),
                        kind.map(FitKind::size).orElse(""),
                        fits,
                        rows.map(InsteadRows::built).orElse(null),
                        rows.map(InsteadRows::others).orElse(List.of()),
                        tries,
                        wires,
                        reckoned ? "" : none(place),
                        bench.history().seq(),
                        Desk.fresh()));
    }

    private List<FitLine> fits(OnBench bench, Place place) {
        return new FitRows(desk.shop().archive().state().of(bench.keywork().maker()))
                .at(
                        bench.job().identity().voice(),
                        place.id(),
                        bench.job().identity().serial());
    }

    private List<LeverPage.Try> tries(OnBench bench, Place place) {
        return InsteadRows.keyOfCentre(bench, place)
                .map(key -> TryRows.centres(bench.id(), desk.later().bounce(bench.job(), key)))
                .orElse(List.of());
    }

    private List<Figure> wires(OnBench bench, Place place) {
        if (place.kind() != PlaceKind.SPRING || !(place.belongsTo() instanceof Owner.OfKey key)) {
            return List.of();
        }
        return desk.later().feel(bench.job()).finger(key.id()).stream()
                .flatMap(finger -> finger.wires().stream())
                .map(wire -> Figure.of(bench.id(), "With " + wire.sizeWord(), wire.force()))
                .toList();
    }

    private static String state(PlannedPlace place) {
        String found = place.found() == null
                ? "Nobody has looked at it yet."
                : OnBench.capital(place.found().condition().word()) + ".";
        return "%s The plan says: %s, %s."
                .formatted(
                        found,
                        place.treatment().word(),
                        place.why().replaceAll("goes with \\S+", "goes with its pad or cork"));
    }

    private static String none(Place place) {
        return place.kind() == PlaceKind.PAD
                ? "A pad is chosen by its own window, on Sizes; which class of pad closes there is told on Closing."
                : "Nothing here is cut from a sheet, so no other material is reckoned; ask what fits, or have it made.";
    }
}
