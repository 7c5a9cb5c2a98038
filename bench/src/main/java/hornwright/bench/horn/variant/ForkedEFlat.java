package hornwright.bench.horn.variant;

import hornwright.bench.horn.Axis;
import hornwright.bench.horn.ClosingSet;
import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Face;
import hornwright.bench.horn.Fingering;
import hornwright.bench.horn.Form;
import hornwright.bench.horn.HingeTube;
import hornwright.bench.horn.Hold;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Layer;
import hornwright.bench.horn.Link;
import hornwright.bench.horn.LinkedSet;
import hornwright.bench.horn.Owner;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.PlaceKind;
import hornwright.bench.horn.Position;
import hornwright.bench.horn.Post;
import hornwright.bench.horn.Rod;
import hornwright.bench.horn.ToneHole;
import hornwright.bench.horn.Touch;
import hornwright.bench.horn.TradeName;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A forked E flat for a horn that has none: a small vent below the D hole that the second finger holds shut. So that E
 * closes without it when the first and third fingers are down, its cup and touch are two keys and D closes the cup too.
 * Common practice for the idea; sizes are patterned on the bis key, and the vent is placed, not tuned.
 */
final class ForkedEFlat {
    private static final String VENT = "forked-e-flat";
    private static final String TOUCH = "e-touch";
    /** The vent lies this share of the way from the D hole to the low E flat hole, bench judgement. */
    private static final double SHARE = 0.56;

    private final Draft draft;
    private final Keywork horn;
    private final Key e;
    private final Key d;
    private final Cup bis;

    private ForkedEFlat(Keywork horn) {
        this.horn = horn;
        this.draft = new Draft(horn);
        this.e = keyOver(horn, "E");
        this.d = keyOver(horn, "D");
        this.bis = cupOver(horn, "bis");
    }

    static boolean canBeMade(Keywork horn) {
        return List.of("D", "E", "bis", "low Eb").stream()
                        .allMatch(name -> Variants.hole(horn, name).isPresent())
                && keyOver(horn, "E").touch() != null
                && !horn.linksFrom(keyOver(horn, "E")).isEmpty();
    }

    static Keywork added(Keywork horn) {
        return new ForkedEFlat(horn).made();
    }

    private static Cup cupOver(Keywork horn, String hole) {
        String id = Variants.hole(horn, hole).orElseThrow().id();
        return horn.cups().where(cup -> cup.hole().equals(id)).getFirst();
    }

    private static Key keyOver(Keywork horn, String hole) {
        return horn.keyOf(cupOver(horn, hole));
    }

    private Keywork made() {
        Key vent = vent();
        Key touch = touch();
        Link dToE = link("d", d, e, 14);
        Link touchToE = link(TOUCH, touch, e, 14);
        Link touchToVent = link(TOUCH, touch, vent, 12);
        for (Link link : List.of(dToE, touchToE, touchToVent)) {
            draft.links.add(link);
            draft.places.addAll(placesOf(link));
        }
        forces(dToE, touchToE, touchToVent, touch, vent);
        uses(vent);
        return draft.done();
    }

    private Key vent() {
        ToneHole dHole = horn.holeOf(cupOver(horn, "D"));
        double low = Variants.hole(horn, "low Eb").orElseThrow().at().atMm();
        double at = Copies.round(dHole.at().atMm() + SHARE * (low - dHole.at().atMm()), 1);
        ToneHole like = horn.holeOf(bis);
        ToneHole hole = new ToneHole(
                VENT,
                TradeName.of("forked Eb vent", "fork Eb"),
                new Position(at, dHole.at().angleDeg()),
                like.diameterMm(),
                like.chimneyMm(),
                like.rimWallMm(),
                like.rim(),
                false);
        Rod rod = horn.rodOf(d);
        double arm = Shape.armMm(horn.tube(), rod, hole);
        double open = Shape.openRad(bis.heightFrontMm(), arm, hole);
        Key likeKey = horn.keyOf(bis);
        Twin twin = new Twin(
                VENT,
                hole.name(),
                likeKey,
                at - likeKey.axis().atMm(),
                rod.angleDeg() - likeKey.axis().angleDeg());
        Key key = grouped(twin.key(rod.id(), open, null, likeKey.tube()), rod);
        Draft.putAfter(draft.holes, "low-e-flat", hole);
        Draft.putAfter(
                draft.cups, "cup.low-e-flat", Copies.cup(bis, "cup." + VENT, VENT, VENT, arm, bis.heightFrontMm()));
        Draft.putAfter(draft.keys, d.id(), key);
        Owner cup = new Owner.OfCup("cup." + VENT);
        twin.places(draft, new Owner.OfCup(bis.id()), cup)
                .forEach(place -> draft.places.add(Copies.place(place, hole.at(), cup)));
        twin.places(draft, new Owner.OfKey(likeKey.id()), new Owner.OfKey(VENT)).stream()
                .filter(place -> place.kind() != PlaceKind.PEARL)
                .forEach(draft.places::add);
        Draft.put(draft.rods, reaching(rod, at + likeKey.tube().lengthMm() / 2));
        return key;
    }

    /** It turns on the rod of the lower stack and is regulated with it. */
    private Key grouped(Key key, Rod rod) {
        return new Key(
                key.id(),
                key.name(),
                d.group(),
                key.rest(),
                rod.id(),
                new Axis(key.axis().atMm(), rod.angleDeg(), rod.heightAboveBodyMm(), rod.direction()),
                key.stop(),
                null,
                null,
                key.spring(),
                key.restRotationRad(),
                key.pressedRotationRad(),
                key.tube());
    }

    private static Rod reaching(Rod rod, double toMm) {
        double to = Copies.round(Math.max(rod.toMm(), toMm), 1);
        List<Post> posts = new ArrayList<>(rod.posts());
        Post last = posts.removeLast();
        posts.add(new Post(last.id(), new Position(to, last.at().angleDeg())));
        return Copies.rod(rod, rod.order(), to, rod.angleDeg(), posts, rod.removeAfter());
    }

    /** The second finger's pearl on a key of its own, without a cup. */
    private Key touch() {
        Twin twin = new Twin(TOUCH, TradeName.of("E touch"), e, 8, 0);
        HingeTube tube = new HingeTube(10, e.tube().outerMm(), e.tube().innerMm(), 0);
        Touch finger = Objects.requireNonNull(e.touch());
        Key key = twin.key(e.rod(), e.restRotationRad(), finger, tube);
        Draft.putAfter(draft.keys, e.id(), key);
        Draft.put(draft.keys, Copies.played(e, null, e.spring(), e.tube()));
        for (Place place : twin.places(draft, new Owner.OfKey(e.id()), new Owner.OfKey(TOUCH))) {
            if (place.kind() != PlaceKind.PEARL) {
                draft.places.add(place);
            }
        }
        draft.places.replaceAll(
                place -> place.kind() == PlaceKind.PEARL && place.belongsTo().equals(new Owner.OfKey(e.id()))
                        ? Copies.place(place, place.at(), new Owner.OfKey(TOUCH))
                        : place);
        return key;
    }

    /** A thin cork that leaves the least gap at rest and none when both are down. */
    private Link link(String from, Key driver, Key follower, double driverArmMm) {
        Link like = horn.linksFrom(e).getFirst();
        String id = "link." + from + "-to-" + follower.id();
        double arm = Math.floor(10 * driverArmMm * driver.restRotationRad() / follower.restRotationRad()) / 10;
        Layer layer = like.layers().getFirst();
        double at = (driver.axis().atMm() + follower.axis().atMm()) / 2;
        return new Link(
                id,
                like.kind(),
                driver.id(),
                driverArmMm,
                follower.id(),
                arm,
                layer.thicknessMm(),
                like.stiffnessNPerMm(),
                new Position(Copies.round(at, 1), like.at().angleDeg()),
                List.of(new Layer(
                        id, layer.material(), layer.thicknessMm(), Face.DRIVER, layer.side(), Form.STRIP, layer.cut())),
                null,
                null);
    }

    private List<Place> placesOf(Link link) {
        Link like = horn.linksFrom(e).getFirst();
        String likePlace = like.layers().getFirst().place();
        List<Place> made = new ArrayList<>();
        for (Place place : horn.placesOf(like)) {
            String beneath = place.beneath();
            made.add(new Place(
                    place.id().replace(likePlace, link.id()),
                    place.kind(),
                    TradeName.of((beneath == null ? "" : "adhesive under ") + said(link) + " link cork"),
                    place.part(),
                    link.at(),
                    new Owner.OfLink(link.id()),
                    beneath == null ? null : link.id(),
                    place.asBuilt(),
                    place.diameterMm(),
                    place.lengthMm()));
        }
        return made;
    }

    private String said(Link link) {
        return nameOf(link.driver()) + " to " + nameOf(link.follower());
    }

    private String nameOf(String key) {
        return draft.keys.stream()
                .filter(one -> one.id().equals(key))
                .findFirst()
                .orElseThrow()
                .name()
                .plain();
    }

    /** D and the second finger now carry more springs. */
    private void forces(Link dToE, Link touchToE, Link touchToVent, Key touch, Key vent) {
        Touch second = Objects.requireNonNull(touch.touch());
        double before = second.forceN() * second.armMm();
        double own = touch.spring().torqueNmm();
        double more = carried(touchToVent, vent) + (ratio(touchToE) - 1) * before;
        heavier(TOUCH, second, own + more + pressedOn(touchToE, touchToVent, before));
        heavier(d.id(), Objects.requireNonNull(d.touch()), carried(dToE, e));
    }

    /** The cork over E gives a little under the finger, and by that much the vent's pad is pressed past its rim. */
    private double pressedOn(Link touchToE, Link touchToVent, double torqueNmm) {
        double arm = touchToE.driverArmMm();
        double turned = torqueNmm / arm / touchToE.stiffnessNPerMm() / arm * ratio(touchToVent);
        double vent = draft.cups.stream()
                .filter(cup -> cup.key().equals(VENT))
                .mapToDouble(cup ->
                        Math.PI * horn.holeOf(bis).diameterMm() * cup.seatStiffnessMPa() * Math.pow(cup.armMm(), 2))
                .sum();
        return vent * turned * ratio(touchToVent);
    }

    private void heavier(String key, Touch finger, double torqueNmm) {
        draft.keys.replaceAll(one -> one.id().equals(key)
                ? Copies.played(
                        one,
                        Copies.touch(
                                finger,
                                finger.armMm(),
                                finger.closes(),
                                Copies.force(finger.forceN() + torqueNmm / finger.armMm())),
                        one.spring(),
                        one.tube())
                : one);
    }

    private static double carried(Link link, Key follower) {
        return ratio(link) * follower.spring().torqueNmm();
    }

    private static double ratio(Link link) {
        return link.driverArmMm() / link.followerArmMm();
    }

    private void uses(Key vent) {
        String cup = "cup." + vent.id();
        String eCup = cupOver(horn, "E").id();
        draft.sets.replaceAll(set -> {
            List<String> closes = new ArrayList<>(set.closes());
            if (set.press().equals(e.id())) {
                closes.add(cup);
                return new ClosingSet(TOUCH, closes);
            }
            if (set.press().equals(d.id())) {
                closes.add(eCup);
            }
            return new ClosingSet(set.press(), closes);
        });
        draft.holds.replaceAll(
                hold -> hold.press().equals(e.id()) ? new Hold(TOUCH, hold.holds(), hold.whileReleased()) : hold);
        draft.linkedSets.replaceAll(set -> {
            List<String> cups = new ArrayList<>(set.cups());
            if (cups.contains(eCup)) {
                cups.add(cup);
            }
            return new LinkedSet(set.name(), cups);
        });
        fingerings();
    }

    /** The vent stands open whenever the second finger is up, and that is whenever E is open. */
    private void fingerings() {
        String eHole = horn.holeOf(cupOver(horn, "E")).id();
        draft.fingerings.replaceAll(fingering -> fingering.open().contains(eHole) ? with(fingering) : fingering);
        for (String note : List.of("D4", "D5")) {
            draft.base.fingerings().stream()
                    .filter(f -> f.written().equals(note) && f.standard())
                    .findFirst()
                    .ifPresent(f -> draft.fingerings.add(forked(f)));
        }
    }

    private static Fingering with(Fingering fingering) {
        List<String> open = new ArrayList<>(fingering.open());
        open.add(VENT);
        return Copies.open(fingering, open);
    }

    private static Fingering forked(Fingering d) {
        char octave = d.written().charAt(1);
        return new Fingering(
                "note.e-flat-" + octave + ".forked",
                "Eb" + octave,
                "forked",
                d.register(),
                d.peak(),
                false,
                with(d).open());
    }
}
