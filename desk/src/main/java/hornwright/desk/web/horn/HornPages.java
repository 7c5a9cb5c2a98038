package hornwright.desk.web.horn;

import hornwright.bench.horn.KeyGroup;
import hornwright.bench.horn.Place;
import hornwright.bench.sheet.SheetAsked;
import hornwright.desk.drawing.Showing;
import hornwright.desk.drawing.Standing;
import hornwright.desk.drawing.UnrolledHorn;
import hornwright.desk.use.FindAnything;
import hornwright.desk.web.page.Desk;
import hornwright.desk.web.page.Refusal;
import hornwright.desk.web.view.Next;
import hornwright.desk.web.view.OnBench;
import hornwright.desk.web.view.PlacePanel;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The horn unrolled, its layers, and the place that is open beside it. */
public final class HornPages {
    private static final int LONGEST = 60;

    private final Desk desk;
    private final FindAnything places;
    /** A drawing follows from its keywork alone and takes a while; layers only colour it. */
    private final ConcurrentHashMap<String, UnrolledHorn> drawn = new ConcurrentHashMap<>();

    public HornPages(Desk desk) {
        this.desk = desk;
        this.places = new FindAnything(desk.shop());
    }

    public void routes(RoutesConfig routes) {
        routes.get("/horn/{id}", this::horn);
    }

    private void horn(Context context) {
        OnBench bench = desk.bench(context);
        Layer layer = Layer.named(context.queryParam("layer"));
        String asked =
                Objects.requireNonNullElse(context.queryParam("seek"), "").strip();
        HornPage.Seek seek = seek(bench, layer, asked.substring(0, Math.min(asked.length(), LONGEST)));
        Optional<HornPage.Hit> named = named(seek);
        if (named.isPresent()) {
            context.redirect(named.get().address(), HttpStatus.SEE_OTHER);
            return;
        }
        @Nullable String open = context.queryParam("place");
        Optional<Place> place =
                open == null ? Optional.empty() : bench.keywork().places().find(open);
        if (open != null && place.isEmpty()) {
            throw Refusal.notFound("This horn has no place \"%s\".".formatted(open));
        }
        desk.answer(context, "horn", page(context, bench, layer, place, seek));
    }

    private HornPage page(Context context, OnBench bench, Layer layer, Optional<Place> place, HornPage.Seek seek) {
        Showings showings = new Showings(
                bench,
                new Showings.Later(
                        () -> desk.later().feel(bench.job()),
                        () -> SheetAsked.of(desk.plans().inputs(bench.job()))));
        HornRows rows = new HornRows(bench, showings);
        UnrolledHorn horn = drawn.computeIfAbsent(bench.keywork().id(), none -> UnrolledHorn.of(bench.keywork()));
        @Nullable KeyGroup part = part(context);
        @Nullable String open = place.map(Place::id).orElse(null);
        @Nullable
        PlacePanel panel = place.map(one -> new PanelRows(desk.closing(bench, one)).of(one, "", "", Desk.fresh()))
                .orElse(null);
        return new HornPage(
                desk.frame(context, bench, place.map(Place::display).orElse("The horn"), ""),
                bench.id(),
                Next.of(bench),
                horn.screen(
                        one -> shown(layer, one, showings),
                        part,
                        one -> "?layer=" + layer.word() + "&place=" + one.id() + "#place"),
                layer.drawnAs(),
                "%d places, %d cups. Take one in hand."
                        .formatted(
                                bench.keywork().places().size(),
                                bench.keywork().cups().size()),
                rows.layers(layer, open),
                rows.parts(layer, part, horn::part),
                seek,
                Legend.of(bench, layer, showings),
                rows.groups(layer, open),
                panel);
    }

    private static @Nullable KeyGroup part(Context context) {
        String asked = context.queryParam("part");
        return Stream.of(KeyGroup.values())
                .filter(group -> group.word().equals(asked))
                .findFirst()
                .orElse(null);
    }

    /** Places by what a person calls them: "g# foot". */
    private HornPage.Seek seek(OnBench bench, Layer layer, String asked) {
        if (asked.isEmpty()) {
            return new HornPage.Seek("", "", List.of());
        }
        List<HornPage.Hit> hits = places.places(bench.id(), bench.keywork(), asked).stream()
                .map(hit -> new HornPage.Hit(
                        hit.title(), hit.detail(), hit.address() + "&layer=" + layer.word() + "#place"))
                .toList();
        String told = hits.isEmpty()
                ? "No place of this horn is called “%s”. Say its key and what it is: g# foot.".formatted(asked)
                : "%d places answer to “%s”.".formatted(hits.size(), asked);
        return new HornPage.Seek(asked, told, hits);
    }

    /** The one place that was called by all of its name, or the only one that answers. */
    private static Optional<HornPage.Hit> named(HornPage.Seek seek) {
        if (seek.hits().size() == 1) {
            return Optional.of(seek.hits().getFirst());
        }
        List<HornPage.Hit> whole = seek.hits().stream()
                .filter(hit -> words(hit.name()) == words(seek.asked()))
                .toList();
        return whole.size() == 1 ? Optional.of(whole.getFirst()) : Optional.empty();
    }

    private static int words(String text) {
        return text.strip().split("\\s+", -1).length;
    }

    private static Showing.Shown shown(Layer layer, Place place, Showings showings) {
        Showings.Shown shown = showings.of(layer, place);
        Standing standing = standing(shown);
        if (layer.ofNumbers()) {
            NumberLayer numbers = showings.numbers(layer);
            String figure = numbers.figure(place);
            return new Showing.Shown(
                    "", standing, numbers.inWords(place), numbers.depth(place), figure.isEmpty() ? "—" : figure);
        }
        String material = shown.material().isEmpty() ? "unknown" : shown.material();
        return layer == Layer.LEAK || layer == Layer.ORIGIN
                ? new Showing.Shown(material, standing, shown.state().word(), 0, null)
                : new Showing.Shown(material, standing);
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
