package hornwright.desk.drawing;

import hornwright.bench.horn.ById;
import hornwright.bench.horn.Cup;
import hornwright.bench.horn.HornPart;
import hornwright.bench.horn.Identified;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.KeyGroup;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Link;
import hornwright.bench.horn.Owner;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.Position;
import hornwright.bench.horn.Rod;
import hornwright.bench.horn.ToneHole;
import hornwright.bench.horn.Tube;
import hornwright.bench.horn.TubePart;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * A horn nobody built: one straight tube without neck, bow or bell; no palm, side or octave keys, no table; every second
 * hole turned to the other side and one right onto the cut at the back.
 */
final class StraightHorn {
    private static final Set<KeyGroup> GONE =
            Set.of(KeyGroup.PALM, KeyGroup.SIDE, KeyGroup.OCTAVE, KeyGroup.TABLE, KeyGroup.OTHER);

    private StraightHorn() {}

    static Keywork from(Keywork k) {
        ById<Key> keys = only(k.keys(), key -> !GONE.contains(key.group()));
        ById<Cup> cups = only(k.cups(), cup -> keys.contains(cup.key()));
        Set<String> covered = cups.stream().map(Cup::hole).collect(Collectors.toSet());
        ById<ToneHole> holes = ById.of(k.holes().stream()
                .filter(h -> covered.contains(h.id()))
                .map(StraightHorn::turned)
                .toList());
        ById<Link> links = only(k.links(), l -> keys.contains(l.driver()) && keys.contains(l.follower()));
        Set<String> turning = keys.stream().map(Key::rod).collect(Collectors.toSet());
        ById<Rod> rods = only(k.rods(), rod -> turning.contains(rod.id()));
        ById<Place> places = ById.of(k.places().stream()
                .filter(place -> stays(place, cups, keys, links, rods, holes))
                .map(place -> moved(place, cups, holes))
                .toList());
        Tube tube = new Tube(
                k.tube().wallMm(),
                k.tube().mouthpieceVolumeMm3(),
                k.tube().bore(),
                List.of(new TubePart(HornPart.BODY, 0, k.tube().lengthMm())));
        return new Keywork(
                "straight",
                "Nobody & Sons",
                "straight horn",
                k.voice(),
                k.switches(),
                tube,
                holes,
                cups,
                keys,
                links,
                rods,
                places,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                k.lowTable(),
                k.fingerings());
    }

    private static <T extends Identified> ById<T> only(ById<T> all, Predicate<T> test) {
        return ById.of(all.where(test));
    }

    private static ToneHole turned(ToneHole hole) {
        double angle = hole.id().equals("low-c") ? 180 : hole.at().angleDeg();
        double turned = hole.id().startsWith("low-b") ? -angle : angle;
        return new ToneHole(
                hole.id(),
                hole.name(),
                new Position(hole.at().atMm(), turned),
                hole.diameterMm(),
                hole.chimneyMm(),
                hole.rimWallMm(),
                hole.rim(),
                hole.octaveVent());
    }

    private static boolean stays(
            Place place, ById<Cup> cups, ById<Key> keys, ById<Link> links, ById<Rod> rods, ById<ToneHole> holes) {
        return switch (place.belongsTo()) {
            case Owner.OfCup cup -> cups.contains(cup.id());
            case Owner.OfKey key -> keys.contains(key.id());
            case Owner.OfLink link -> links.contains(link.id());
            case Owner.OfRod rod -> rods.contains(rod.id());
            case Owner.OfHole hole -> holes.contains(hole.id());
            case Owner.OfPart part -> part.part() == HornPart.BODY;
        };
    }

    private static Place moved(Place place, ById<Cup> cups, ById<ToneHole> holes) {
        if (!(place.belongsTo() instanceof Owner.OfCup(String id))) {
            return place;
        }
        Position at = holes.get(cups.get(id).hole()).at();
        return new Place(
                place.id(),
                place.kind(),
                place.name(),
                place.part(),
                at,
                place.belongsTo(),
                place.beneath(),
                place.asBuilt(),
                place.diameterMm(),
                place.lengthMm());
    }
}
