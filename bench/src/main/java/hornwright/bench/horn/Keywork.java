package hornwright.bench.horn;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * One instrument as its maker built it, as data. Cups and holes are listed from the bell upwards. Every reference
 * between the parts holds.
 */
public record Keywork(
        String id,
        String maker,
        String name,
        Voice voice,
        Switches switches,
        Tube tube,
        ById<ToneHole> holes,
        ById<Cup> cups,
        ById<Key> keys,
        ById<Link> links,
        ById<Rod> rods,
        ById<Place> places,
        List<ClosingSet> sets,
        List<Hold> holds,
        List<LinkedSet> linkedSets,
        List<OctaveState> octaveStates,
        LowTable lowTable,
        ById<Fingering> fingerings) {
    public Keywork {
        sets = List.copyOf(sets);
        holds = List.copyOf(holds);
        linkedSets = List.copyOf(linkedSets);
        octaveStates = List.copyOf(octaveStates);
    }

    /** The same instrument with other keys in the place of its own. */
    public Keywork withKeys(ById<Key> others) {
        return new Keywork(
                id,
                maker,
                name,
                voice,
                switches,
                tube,
                holes,
                cups,
                others,
                links,
                rods,
                places,
                sets,
                holds,
                linkedSets,
                octaveStates,
                lowTable,
                fingerings);
    }

    public ToneHole holeOf(Cup cup) {
        return holes.get(cup.hole());
    }

    public Key keyOf(Cup cup) {
        return keys.get(cup.key());
    }

    /** The cup a key carries, or nothing for a lever or touch without one. */
    public Optional<Cup> cupOf(Key key) {
        return cups.stream().filter(c -> c.key().equals(key.id())).findFirst();
    }

    public Rod rodOf(Key key) {
        return rods.get(key.rod());
    }

    /** The keys on a rod from its upper end to its lower. */
    public List<Key> keysOn(Rod rod) {
        return keys.stream()
                .filter(k -> k.rod().equals(rod.id()))
                .sorted(Comparator.comparingDouble(k -> k.axis().atMm()))
                .toList();
    }

    public List<Key> group(KeyGroup group) {
        return keys.where(k -> k.group() == group);
    }

    /** The group a place is surveyed with; empty for what belongs to the tube. A link goes with its driver. */
    public Optional<KeyGroup> groupOf(Place place) {
        return switch (place.belongsTo()) {
            case Owner.OfCup cup -> Optional.of(keyOf(cups.get(cup.id())).group());
            case Owner.OfKey key -> Optional.of(keys.get(key.id()).group());
            case Owner.OfLink link ->
                Optional.of(keys.get(links.get(link.id()).driver()).group());
            case Owner.OfRod rod ->
                keysOn(rods.get(rod.id())).stream().findFirst().map(Key::group);
            case Owner.OfHole hole -> Optional.empty();
            case Owner.OfPart part -> Optional.empty();
        };
    }

    public List<Place> placesOf(Cup cup) {
        return placesOf(new Owner.OfCup(cup.id()));
    }

    public List<Place> placesOf(Key key) {
        return placesOf(new Owner.OfKey(key.id()));
    }

    public List<Place> placesOf(Link link) {
        return placesOf(new Owner.OfLink(link.id()));
    }

    public List<Place> placesOf(Owner owner) {
        return places.where(p -> p.belongsTo().equals(owner));
    }

    /** The trade name of a cup, which is that of its key. */
    public TradeName nameOf(Cup cup) {
        return holeOf(cup).name();
    }

    public List<Link> linksFrom(Key driver) {
        return links.where(l -> l.driver().equals(driver.id()));
    }

    public List<Link> linksTo(Key follower) {
        return links.where(l -> l.follower().equals(follower.id()));
    }

    /** Gap of a link with nothing pressed. */
    public double restGapMm(Link link) {
        return link.gapMm(
                keys.get(link.driver()).restRotationRad(),
                keys.get(link.follower()).restRotationRad());
    }

    /** Rods in the order they come off the horn. */
    public List<Rod> removalOrder() {
        return rods.stream().sorted(Comparator.comparingInt(Rod::order)).toList();
    }

    /** Keys in the order they come off the horn. */
    public List<Key> keysInRemovalOrder() {
        return removalOrder().stream().flatMap(r -> keysOn(r).stream()).toList();
    }
}
