package hornwright.desk.web;

import hornwright.bench.horn.Place;
import hornwright.desk.drawing.Showing;
import hornwright.desk.drawing.Standing;
import hornwright.desk.drawing.UnrolledHorn;
import hornwright.desk.web.view.HornPage;
import hornwright.desk.web.view.HornRows;
import hornwright.desk.web.view.Layer;
import hornwright.desk.web.view.Next;
import hornwright.desk.web.view.OnBench;
import hornwright.desk.web.view.PanelRows;
import hornwright.desk.web.view.PlacePanel;
import hornwright.desk.web.view.Showings;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/** The horn unrolled, its layers, and the place that is open beside it. */
final class HornPages {
    private final Desk desk;
    /** A drawing follows from its keywork alone and takes a while; layers only colour it. */
    private final ConcurrentHashMap<String, UnrolledHorn> drawn = new ConcurrentHashMap<>();

    HornPages(Desk desk) {
        this.desk = desk;
    }

    void routes(RoutesConfig routes) {
        routes.get("/horn/{id}", this::horn);
    }

    private void horn(Context context) {
        OnBench bench = desk.bench(context);
        Layer layer = Layer.named(context.queryParam("layer"));
        @Nullable String open = context.queryParam("place");
        Optional<Place> place =
                open == null ? Optional.empty() : bench.keywork().places().find(open);
        if (open != null && place.isEmpty()) {
            throw Refusal.notFound("This horn has no place \"%s\".".formatted(open));
        }
        desk.answer(context, "horn", page(context, bench, layer, place));
    }

    private HornPage page(Context context, OnBench bench, Layer layer, Optional<Place> place) {
        HornRows rows = new HornRows(bench);
        @Nullable String open = place.map(Place::id).orElse(null);
        @Nullable
        PlacePanel panel = place.map(one -> new PanelRows(desk.closing(bench, one)).of(one, "", "", Desk.fresh()))
                .orElse(null);
        return new HornPage(
                desk.frame(context, bench, place.map(Place::display).orElse("The horn"), ""),
                bench.id(),
                Next.of(bench),
                drawing(bench, layer),
                layer.drawnAs(),
                "%d places, %d cups. Take one in hand."
                        .formatted(
                                bench.keywork().places().size(),
                                bench.keywork().cups().size()),
                rows.layers(layer, open),
                Legend.of(bench, layer),
                rows.groups(layer, open),
                panel);
    }

    private String drawing(OnBench bench, Layer layer) {
        Showings showings = new Showings(bench);
        return drawn.computeIfAbsent(bench.keywork().id(), none -> UnrolledHorn.of(bench.keywork()))
                .screen(place -> shown(showings.of(layer, place)));
    }

    private static Showing.Shown shown(Showings.Shown shown) {
        return new Showing.Shown(shown.material().isEmpty() ? "unknown" : shown.material(), standing(shown));
    }

    private static Standing standing(Showings.Shown shown) {
        for (Standing standing : Standing.values()) {
            if (standing.word().equals(shown.state().icon())) {
                return standing;
            }
        }
        return Standing.AS_BUILT;
    }
}
