package hornwright.bench.horn.variant;

import hornwright.bench.horn.Coupling;
import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Link;
import hornwright.bench.horn.Owner;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.PlaceKind;
import hornwright.bench.horn.Rest;
import hornwright.bench.horn.Rod;
import hornwright.bench.horn.ToneHole;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Takes keys and links away, and with them everything that was there only for their sake. */
final class Removal {
    private final Draft draft;
    private final Set<String> holes = new HashSet<>();
    private final Set<Owner> gone = new HashSet<>();

    private Removal(Keywork from) {
        this.draft = new Draft(from);
    }

    static Keywork ofKeys(Keywork from, Set<String> keys) {
        return of(from, keys, Set.of());
    }

    static Keywork ofLinks(Keywork from, Set<String> links) {
        return of(from, Set.of(), links);
    }

    static Keywork of(Keywork from, Set<String> keys, Set<String> links) {
        Removal removal = new Removal(from);
        removal.cupsOf(keys);
        removal.keys(keys);
        removal.links(keys, links);
        removal.emptyRods();
        removal.places();
        removal.fingerings();
        Uses.keepWhatIsThere(removal.draft);
        return removal.draft.done();
    }

    private void cupsOf(Set<String> keys) {
        for (Cup cup : List.copyOf(draft.cups)) {
            if (keys.contains(cup.key())) {
                draft.cups.remove(cup);
                holes.add(cup.hole());
                gone.add(new Owner.OfCup(cup.id()));
                gone.add(new Owner.OfHole(cup.hole()));
            }
        }
        draft.holes.removeIf(hole -> holes.contains(hole.id()));
    }

    private void keys(Set<String> keys) {
        draft.keys.removeIf(key -> keys.contains(key.id()));
        keys.forEach(key -> gone.add(new Owner.OfKey(key)));
    }

    private void links(Set<String> keys, Set<String> links) {
        for (Link link : List.copyOf(draft.links)) {
            if (links.contains(link.id()) || keys.contains(link.driver()) || keys.contains(link.follower())) {
                draft.links.remove(link);
                gone.add(new Owner.OfLink(link.id()));
            }
        }
        draft.links.replaceAll(link -> {
            Coupling coupling = link.coupling();
            boolean loose =
                    coupling != null && (keys.contains(coupling.through()) || keys.contains(coupling.whenKey()));
            return loose ? Copies.uncoupled(link) : link;
        });
    }

    private void emptyRods() {
        Set<String> left = new HashSet<>();
        for (Rod rod : List.copyOf(draft.rods)) {
            if (draft.keys.stream().noneMatch(key -> key.rod().equals(rod.id()))) {
                draft.rods.remove(rod);
                gone.add(new Owner.OfRod(rod.id()));
            } else {
                left.add(rod.id());
            }
        }
        draft.rods.replaceAll(rod -> Copies.removeAfter(
                rod, rod.removeAfter().stream().filter(left::contains).toList()));
        renumber(draft.rods);
    }

    /** Orders run from 1 without a gap, in the order they had. */
    static void renumber(List<Rod> rods) {
        List<String> inOrder = rods.stream()
                .sorted(Comparator.comparingInt(Rod::order))
                .map(Rod::id)
                .toList();
        rods.replaceAll(rod -> Copies.order(rod, inOrder.indexOf(rod.id()) + 1));
    }

    private void places() {
        List<Place> guards = new ArrayList<>();
        for (ToneHole hole : draft.base.holes().where(h -> holes.contains(h.id()))) {
            guards.addAll(draft.base.places().where(p -> isGuardOf(hole, p)));
        }
        draft.places.removeIf(place -> gone.contains(place.belongsTo()) || guards.contains(place));
        Set<String> left = new HashSet<>();
        draft.places.forEach(place -> left.add(place.id()));
        draft.places.removeIf(place -> place.beneath() != null && !left.contains(place.beneath()));
    }

    /** A guard is soldered to the tube, over the hole it guards. */
    static boolean isGuardOf(ToneHole hole, Place place) {
        return place.kind() == PlaceKind.KEY_GUARD && place.at().equals(hole.at());
    }

    /** A note that opened a hole no longer there is gone; one that merely left it open stays. */
    private void fingerings() {
        Set<String> opened = new HashSet<>();
        for (String hole : holes) {
            draft.base.cups().stream()
                    .filter(cup -> cup.hole().equals(hole) && cup.rest() == Rest.CLOSED)
                    .forEach(cup -> opened.add(cup.hole()));
        }
        draft.fingerings.removeIf(fingering -> fingering.open().stream().anyMatch(opened::contains));
        draft.fingerings.replaceAll(fingering -> Copies.open(
                fingering,
                fingering.open().stream().filter(hole -> !holes.contains(hole)).toList()));
    }
}
