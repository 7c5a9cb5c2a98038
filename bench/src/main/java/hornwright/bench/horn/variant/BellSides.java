package hornwright.bench.horn.variant;

import hornwright.bench.horn.BellKeySide;
import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.KeyGroup;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Owner;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.Position;
import hornwright.bench.horn.Post;
import hornwright.bench.horn.Rest;
import hornwright.bench.horn.Rod;
import hornwright.bench.horn.ToneHole;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Moves the two lowest cups to the side of the bell a maker put them on, as in a mirror. */
final class BellSides {
    private BellSides() {}

    /** Low B flat first, then low B: the bell keys that stand open. */
    static List<Cup> bellCups(Keywork horn) {
        return horn.cups().where(cup -> {
            Key key = horn.keyOf(cup);
            return key.group() == KeyGroup.BELL && key.rest() == Rest.OPEN;
        });
    }

    static Keywork at(Keywork horn, BellKeySide side) {
        List<Cup> cups = bellCups(horn);
        Draft draft = new Draft(horn);
        for (int i = 0; i < cups.size(); i++) {
            // split: the lowest on the right, the next on the left, common practice
            boolean left = side == BellKeySide.LEFT || (side == BellKeySide.SPLIT && i % 2 == 1);
            ToneHole hole = horn.holeOf(cups.get(i));
            if (left != hole.at().angleDeg() < 0) {
                mirror(draft, cups.get(i));
            }
        }
        order(draft, cups, side == BellKeySide.SPLIT);
        return draft.done();
    }

    private static void mirror(Draft draft, Cup cup) {
        Keywork horn = draft.base;
        ToneHole hole = horn.holeOf(cup);
        Key key = horn.keyOf(cup);
        Rod rod = horn.rodOf(key);
        Draft.put(draft.holes, Copies.at(hole, across(hole.at())));
        Draft.put(draft.keys, Copies.moved(key, BellSides::across));
        List<Post> posts = rod.posts().stream()
                .map(post -> new Post(post.id(), across(post.at())))
                .toList();
        Draft.put(draft.rods, Copies.rod(rod, rod.order(), rod.toMm(), -rod.angleDeg(), posts, rod.removeAfter()));
        Set<Owner> owners = new HashSet<>(List.of(
                new Owner.OfCup(cup.id()),
                new Owner.OfKey(key.id()),
                new Owner.OfHole(hole.id()),
                new Owner.OfRod(rod.id())));
        draft.places.replaceAll(place ->
                owners.contains(place.belongsTo()) || Removal.isGuardOf(hole, place) ? onTheBell(place, hole) : place);
    }

    /** What lies at the table, such as the roller of a one-piece key, stays there. */
    private static Place onTheBell(Place place, ToneHole hole) {
        boolean near = Math.abs(place.at().atMm() - hole.at().atMm()) < 100;
        return near ? Copies.place(place, across(place.at()), place.belongsTo()) : place;
    }

    private static Position across(Position at) {
        return new Position(at.atMm(), -at.angleDeg());
    }

    /** Two rods side by side on one side of the bell come off one after the other; on two sides neither waits. */
    private static void order(Draft draft, List<Cup> cups, boolean split) {
        List<String> rods =
                cups.stream().map(cup -> draft.base.keyOf(cup).rod()).toList();
        for (int i = 1; i < rods.size(); i++) {
            String before = rods.get(i - 1);
            String id = rods.get(i);
            draft.rods.replaceAll(rod -> {
                if (!rod.id().equals(id) || id.equals(before)) {
                    return rod;
                }
                List<String> after = new ArrayList<>(rod.removeAfter());
                after.remove(before);
                if (!split) {
                    after.add(before);
                }
                return Copies.removeAfter(rod, after);
            });
        }
    }
}
