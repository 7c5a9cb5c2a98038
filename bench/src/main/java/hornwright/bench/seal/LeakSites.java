package hornwright.bench.seal;

import hornwright.bench.horn.ById;
import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Place;
import hornwright.bench.seal.LeakSite.Way;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Every leak site of a horn: the neck first, then the pads from the top down, then what is soldered. */
public final class LeakSites {
    private LeakSites() {}

    public static ById<LeakSite> of(Keywork keywork) {
        Stream<LeakSite> neck = sites(keywork, true);
        Stream<LeakSite> pads = keywork.cups().list().reversed().stream().map(cup -> pad(keywork, cup));
        Stream<LeakSite> soldered = sites(keywork, false);
        return ById.of(Stream.of(neck, pads, soldered).flatMap(part -> part).toList());
    }

    private static Stream<LeakSite> sites(Keywork keywork, boolean atTheNeck) {
        return keywork.places().stream()
                .flatMap(place -> wayOf(place)
                        .filter(way -> atTheNeck == (way == Way.TENON || way == Way.CORK))
                        .map(way -> new LeakSite(place.id(), place.display(), way))
                        .stream());
    }

    private static LeakSite pad(Keywork keywork, Cup cup) {
        Way way = keywork.keyOf(cup).group() == hornwright.bench.horn.KeyGroup.OCTAVE ? Way.VENT : Way.PAD;
        return new LeakSite("pad." + cup.hole(), keywork.nameOf(cup).display() + " pad", way);
    }

    private static Optional<Way> wayOf(Place place) {
        return switch (place.kind()) {
            case TENON -> Optional.of(Way.TENON);
            case NECK_CORK -> Optional.of(Way.CORK);
            case PIP -> Optional.of(Way.PIP);
            case SOLDERED_RING -> Optional.of(Way.JOINT);
            case BRACE, THUMB_HOOK, STRAP_RING, NECK_BRACE -> Optional.of(Way.FOOT);
            default -> Optional.empty();
        };
    }

    /** What to mind while trying; the usual cautions. */
    public static List<String> cautions() {
        return List.of(
                "Use your own mouthpiece or a bulb; disinfect what touches the mouth, and do not suck hard on a neck end.",
                "Little pressure is enough: 1 to 3 kPa. More lifts pads that are sound.",
                "Keep water off felt and leather, and dry the joint.");
    }
}
