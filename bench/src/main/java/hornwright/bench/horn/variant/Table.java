package hornwright.bench.horn.variant;

import hornwright.bench.horn.HingeTube;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.KeyGroup;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Link;
import hornwright.bench.horn.LinkKind;
import hornwright.bench.horn.Owner;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.PlaceKind;
import hornwright.bench.horn.Rest;
import hornwright.bench.horn.Spring;
import hornwright.bench.horn.Touch;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The left little finger's keys, as one- or two-piece, plain or articulated. */
final class Table {
    private Table() {}

    /** The contacts between a table touch and the open bell key it closes; none when they are one piece. */
    static List<Link> bellContacts(Keywork horn) {
        return horn.links()
                .where(link -> link.kind() == LinkKind.CLOSES
                        && horn.keys().get(link.driver()).group() == KeyGroup.TABLE
                        && isOpenBellKey(horn, link.follower()));
    }

    private static boolean isOpenBellKey(Keywork horn, String key) {
        return horn.keys().get(key).group() == KeyGroup.BELL
                && horn.keys().get(key).rest() == Rest.OPEN;
    }

    static Keywork onePieceBellKeys(Keywork horn) {
        Keywork joined = horn;
        for (Link contact : bellContacts(horn)) {
            joined = Join.over(joined, joined.links().get(contact.id()));
        }
        return joined;
    }

    /** Contacts that hold low C sharp shut while B or B flat is down. */
    static Set<String> cSharpHolds(Keywork horn) {
        return horn.links().stream()
                .filter(link -> link.kind() == LinkKind.HOLDS_SHUT
                        && horn.keys().get(link.follower()).group() == KeyGroup.BELL)
                .map(Link::id)
                .collect(Collectors.toSet());
    }

    static Keywork plainCSharp(Keywork horn) {
        return Removal.ofLinks(horn, cSharpHolds(horn));
    }

    /** The lever whose spring holds the G sharp cup shut; nothing when the key is plain. */
    static Optional<Link> gSharpLever(Keywork horn) {
        return horn.links().stream()
                .filter(link -> link.kind() == LinkKind.HOLDS_SHUT
                        && horn.keys().get(link.driver()).group() == KeyGroup.G_SHARP
                        && horn.keys().get(link.follower()).group() == KeyGroup.G_SHARP)
                .findFirst();
    }

    /** Cup and touch in one piece with the strong spring of the lever; nothing else opens or holds it. */
    static Keywork plainGSharp(Keywork horn) {
        Link held = gSharpLever(horn).orElseThrow();
        Key lever = horn.keys().get(held.driver());
        Key cup = horn.keys().get(held.follower());
        Key touch = ownTouch(horn, lever).orElseThrow();
        Draft draft = new Draft(horn);
        Spring spring = Copies.at(lever.spring(), cup.spring().place());
        Touch finger = Objects.requireNonNull(touch.touch());
        double force = Copies.force(spring.torqueNmm() / finger.armMm());
        HingeTube tube = new HingeTube(
                cup.tube().lengthMm() + lever.tube().lengthMm(),
                cup.tube().outerMm(),
                cup.tube().innerMm(),
                cup.tube().lengthMm() + lever.tube().lengthMm());
        Draft.put(draft.keys, Copies.played(cup, Copies.touch(finger, finger.armMm(), false, force), spring, tube));
        draft.places.replaceAll(place -> plain(place, cup, spring, touch));
        Set<String> links = new HashSet<>();
        horn.linksTo(cup).forEach(link -> links.add(link.id()));
        return Removal.of(draft.done(), Set.of(lever.id(), touch.id()), links);
    }

    /** Of the touches that release the lever, the one that does nothing else. */
    private static Optional<Key> ownTouch(Keywork horn, Key lever) {
        return horn.linksTo(lever).stream()
                .map(link -> horn.keys().get(link.driver()))
                .filter(key -> horn.linksFrom(key).size() == 1)
                .findFirst();
    }

    private static Place plain(Place place, Key cup, Spring spring, Key touch) {
        if (place.id().equals(spring.place())) {
            return Copies.thickness(place, spring.material(), spring.thicknessMm());
        }
        boolean underFinger = place.kind() == PlaceKind.PEARL || place.kind() == PlaceKind.ROLLER;
        return underFinger && place.belongsTo().equals(new Owner.OfKey(touch.id()))
                ? Copies.place(place, place.at(), new Owner.OfKey(cup.id()))
                : place;
    }
}
