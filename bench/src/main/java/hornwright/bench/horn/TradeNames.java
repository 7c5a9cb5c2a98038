package hornwright.bench.horn;

import java.util.Optional;

/** What the bench calls a thing that is known by its id. */
public final class TradeNames {
    private TradeNames() {}

    /** The name of a key, cup, hole, place or link: "F♯", "F♯ and G♯"; an id that is none of these stays as it is. */
    public static String of(Keywork keywork, String id) {
        String bare = id.replaceFirst("^cup\\.", "");
        return keywork.keys()
                .find(bare)
                .map(key -> key.name().display())
                .or(() -> cup(keywork, id))
                .or(() -> keywork.places().find(id).map(Place::display))
                .or(() -> keywork.links().find(id).map(link -> link(keywork, link)))
                .orElse(id);
    }

    private static Optional<String> cup(Keywork keywork, String id) {
        return keywork.cups().stream()
                .filter(cup -> cup.id().equals(id) || cup.hole().equals(id))
                .findFirst()
                .map(cup -> keywork.nameOf(cup).display());
    }

    private static String link(Keywork keywork, Link link) {
        return "%s and %s"
                .formatted(
                        keywork.keys().get(link.driver()).name().display(),
                        keywork.keys().get(link.follower()).name().display());
    }
}
