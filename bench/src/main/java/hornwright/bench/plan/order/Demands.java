package hornwright.bench.plan.order;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Face;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Layer;
import hornwright.bench.horn.Link;
import hornwright.bench.horn.Place;
import hornwright.bench.steps.WorkGraph;
import hornwright.bench.survey.Decision;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** Which step has to suit a decision, and how that is said in one line. */
final class Demands {
    private final Keywork keywork;
    private final WorkGraph graph;

    Demands(Keywork keywork, WorkGraph graph) {
        this.keywork = keywork;
        this.graph = graph;
    }

    /** The steps that make what was decided; what the horn is for and that it went back ask for none. */
    List<String> stepsOf(Decision decision) {
        return switch (decision) {
            case Decision.Height height -> cup(height.cup(), this::setsHeight);
            case Decision.PadThickness pad -> cup(pad.cup(), this::pads);
            case Decision.PadSoftness pads ->
                pads.cup() == null
                        ? keywork.cups().stream()
                                .flatMap(cup -> pads(cup).stream())
                                .toList()
                        : cup(pads.cup(), this::pads);
            case Decision.Contact contact ->
                known(Stream.of("regulate." + bare(contact.link()))).stream().toList();
            case Decision.Treat treat ->
                keywork.places().find(treat.place()).flatMap(this::treats).stream()
                        .toList();
            case Decision.Use use -> List.of();
            case Decision.HandedOver handed -> List.of();
        };
    }

    private List<String> cup(String id, Function<Cup, Optional<String>> step) {
        return keywork.cups().find(id).flatMap(step).stream().toList();
    }

    String why(Decision decision) {
        return switch (decision) {
            case Decision.Height height -> "%s accepted at %s mm".formatted(thing(height), height.frontMm());
            case Decision.PadThickness pad -> "%s settled at %s mm".formatted(thing(pad), pad.thicknessMm());
            case Decision.PadSoftness pads ->
                "%s settled as %s".formatted(thing(pads), pads.padClass().word());
            case Decision.Contact contact -> "%s: %s".formatted(thing(contact), words(contact));
            case Decision.Treat treat -> "%s: %s".formatted(thing(treat), treat.inWords());
            case Decision.Use use -> use.inWords();
            case Decision.HandedOver handed -> handed.inWords();
        };
    }

    /** What was decided about, when the decision was taken back. */
    String whyDropped(Decision decision) {
        return thing(decision) + ": decision taken back";
    }

    private String thing(Decision decision) {
        return switch (decision) {
            case Decision.Height height -> "height of " + cup(height.cup());
            case Decision.PadThickness pad -> "pad thickness of " + cup(pad.cup());
            case Decision.PadSoftness pads ->
                pads.cup() == null ? "class of all pads" : "class of the pad of " + cup(pads.cup());
            case Decision.Contact contact -> "contact of " + link(contact.link());
            case Decision.Treat treat ->
                keywork.places().find(treat.place()).map(Place::display).orElse(treat.place());
            case Decision.Use use -> "use";
            case Decision.HandedOver handed -> "hand-over";
        };
    }

    private String cup(String id) {
        return keywork.cups().find(id).map(cup -> keywork.nameOf(cup).display()).orElse(id);
    }

    private String words(Decision.Contact contact) {
        return keywork.links().find(contact.link()).map(contact::words).orElseGet(contact::words);
    }

    private String link(String id) {
        return keywork.links()
                .find(id)
                .map(link -> "%s and %s".formatted(key(link.driver()), key(link.follower())))
                .orElse(id);
    }

    private String key(String id) {
        return keywork.keys().get(id).name().display();
    }

    /** The layer on the key is the one that is cut to the height; without any the height itself is set anew. */
    private Optional<String> setsHeight(Cup cup) {
        Key key = keywork.keyOf(cup);
        Stream<Layer> layers = key.stop().layers().stream();
        Stream<Layer> onKeyFirst = layers.sorted((a, b) -> Boolean.compare(b.face() == Face.KEY, a.face() == Face.KEY));
        return known(Stream.concat(onKeyFirst.map(layer -> "cork." + layer.place()), Stream.of("height." + key.id())));
    }

    private Optional<String> pads(Cup cup) {
        return known(Stream.of("pad." + cup.hole()));
    }

    /** Cork between two keys is laid by the step of its link. */
    private Optional<String> treats(Place place) {
        Stream<String> links =
                keywork.links().where(link -> lies(place, link)).stream().map(link -> "cork." + link.id());
        return known(Stream.concat(Stream.of(place.id(), "cork." + place.id()), links));
    }

    private static boolean lies(Place place, Link link) {
        return link.layers().stream().anyMatch(layer -> layer.place().equals(place.id()));
    }

    private Optional<String> known(Stream<String> steps) {
        return steps.filter(graph::contains).findFirst();
    }

    private static String bare(String link) {
        return link.replaceFirst("^link\\.", "");
    }
}
