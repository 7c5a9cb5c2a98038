package hornwright.desk.web.horn;

import hornwright.bench.horn.KeyGroup;
import hornwright.bench.horn.Place;
import hornwright.desk.web.view.OnBench;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The horn read aloud: every place by its group, with what the layer shows of it. */
public final class HornRows {
    private final OnBench bench;
    private final Showings showings;

    public HornRows(OnBench bench, Showings showings) {
        this.bench = bench;
        this.showings = showings;
    }

    public List<HornPage.Group> groups(Layer layer, @Nullable String open) {
        Map<KeyGroup, List<HornPage.Line>> byGroup = new EnumMap<>(KeyGroup.class);
        List<HornPage.Line> tube = new ArrayList<>();
        for (Place place : bench.keywork().places()) {
            Optional<KeyGroup> group = bench.keywork().groupOf(place);
            List<HornPage.Line> lines = group.map(of -> byGroup.computeIfAbsent(of, none -> new ArrayList<>()))
                    .orElse(tube);
            lines.add(line(layer, place, open));
        }
        List<HornPage.Group> groups = new ArrayList<>();
        byGroup.forEach((group, lines) -> groups.add(new HornPage.Group(group.title(), lines)));
        groups.add(new HornPage.Group("Tube and neck", tube));
        return groups;
    }

    public List<HornPage.LayerChoice> layers(Layer current, @Nullable String open) {
        List<HornPage.LayerChoice> choices = new ArrayList<>();
        for (Layer layer : Layer.values()) {
            choices.add(new HornPage.LayerChoice(layer.word(), layer.label(), address(layer, open), layer == current));
        }
        return choices;
    }

    /** The groups of keys one may look at closer, as far as the horn has them. */
    public List<HornPage.Part> parts(Layer layer, @Nullable KeyGroup current, Function<KeyGroup, String> box) {
        return Stream.of(KeyGroup.values())
                .filter(group -> bench.keywork().keys().stream().anyMatch(key -> key.group() == group))
                .map(group -> new HornPage.Part(
                        group.title(),
                        address(layer, null) + "&part=" + group.word(),
                        box.apply(group),
                        group == current))
                .toList();
    }

    public String address(Layer layer, @Nullable String place) {
        return bench.address("") + "?layer=" + layer.word() + (place == null ? "" : "&place=" + place);
    }

    private HornPage.Line line(Layer layer, Place place, @Nullable String open) {
        Showings.Shown shown = showings.of(layer, place);
        return new HornPage.Line(
                place.id(),
                OnBench.capital(place.display()),
                address(layer, place.id()) + "#place",
                shown.material(),
                shown.state(),
                place.id().equals(open));
    }
}
