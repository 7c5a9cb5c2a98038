package hornwright.bench.horn.variant;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Fingering;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Owner;
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
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A high F sharp for a horn that has none, made like its high E: a long rod over the back to a lever for the right hand.
 * The hole lies as far above high F as high F lies above high E; that places it, it does not tune it.
 */
final class HighFSharp {
    private static final String ID = "high-f-sharp";
    /** On the back of the tube, clear of the rod of high E and of the octave vent: bench judgement. */
    private static final double HOLE_DEG = 150;

    private static final double ROD_DEG = -168;
    /** Its lever lies a finger's width below that of high E: bench judgement. */
    private static final double TOUCH_BELOW_MM = 10;

    private HighFSharp() {}

    static boolean canBeMade(Keywork horn) {
        return Variants.hole(horn, "high E").isPresent()
                && Variants.hole(horn, "palm F").isPresent();
    }

    static Keywork added(Keywork horn) {
        Cup likeCup = cupOver(horn, "high E");
        Key like = horn.keyOf(likeCup);
        ToneHole e = horn.holeOf(likeCup);
        double f = Variants.hole(horn, "palm F").orElseThrow().at().atMm();
        double at = Copies.round(2 * f - e.at().atMm(), 1);
        Twin twin = new Twin(
                ID,
                TradeName.of("high F#", "high Gb"),
                like,
                Copies.round(at - e.at().atMm(), 1),
                ROD_DEG - like.axis().angleDeg());
        Draft draft = new Draft(horn);
        Rod rod = rod(horn.rodOf(like), twin);
        ToneHole hole = hole(e, twin.name(), new Position(at, HOLE_DEG));
        double arm = Shape.armMm(horn.tube(), rod, hole);
        double open = Shape.openRad(likeCup.heightFrontMm(), arm, hole);
        Touch lever = Objects.requireNonNull(like.touch());
        draft.holes.add(hole);
        draft.cups.add(Copies.cup(likeCup, "cup." + ID, ID, ID, arm, likeCup.heightFrontMm()));
        draft.keys.add(twin.key(rod.id(), open, touch(lever), like.tube()));
        draft.places.addAll(twin.places(draft, new Owner.OfCup(likeCup.id()), new Owner.OfCup("cup." + ID)));
        draft.places.replaceAll(place -> place.belongsTo().equals(new Owner.OfCup("cup." + ID))
                ? Copies.place(place, hole.at(), place.belongsTo())
                : place);
        draft.places.addAll(twin.places(draft, new Owner.OfKey(like.id()), new Owner.OfKey(ID)));
        draft.places.addAll(twin.places(draft, new Owner.OfRod(like.rod()), new Owner.OfRod(rod.id())));
        draft.places.removeIf(place -> isGuide(place.id(), place.beneath()));
        order(draft, like.rod(), rod);
        note(horn).ifPresent(draft.fingerings::add);
        return draft.done();
    }

    /** The guide of high E is on the way of its own lever; the longer key runs in a saddle. */
    private static boolean isGuide(String place, @Nullable String beneath) {
        String guide = PlaceKind.GUIDE.word() + "." + ID;
        return place.equals(guide) || guide.equals(beneath);
    }

    private static Cup cupOver(Keywork horn, String hole) {
        String id = Variants.hole(horn, hole).orElseThrow().id();
        return horn.cups().where(cup -> cup.hole().equals(id)).getFirst();
    }

    private static Rod rod(Rod like, Twin twin) {
        List<Post> posts = like.posts().stream()
                .map(post -> new Post(twin.id(post.id()), twin.at(post.at())))
                .toList();
        return new Rod(
                twin.id(like.id()),
                like.order() + 1,
                like.kind(),
                like.diameterMm(),
                like.direction(),
                Copies.round(like.fromMm() + twin.alongMm(), 1),
                Copies.round(like.toMm() + twin.alongMm(), 1),
                ROD_DEG,
                like.heightAboveBodyMm(),
                posts,
                List.of(like.id()));
    }

    private static ToneHole hole(ToneHole like, TradeName name, Position at) {
        return new ToneHole(ID, name, at, like.diameterMm(), like.chimneyMm(), like.rimWallMm(), like.rim(), false);
    }

    private static Touch touch(Touch lever) {
        return new Touch(
                lever.kind(),
                Shape.shifted(lever.at(), TOUCH_BELOW_MM, 12),
                lever.armMm(),
                lever.closes(),
                lever.forceN());
    }

    /** It comes off behind high E, and before whatever lies under it. */
    private static void order(Draft draft, String like, Rod rod) {
        Set<String> under = Set.of("rod.octave-thumb");
        draft.rods.replaceAll(other -> {
            Rod moved = other.order() >= rod.order() ? Copies.order(other, other.order() + 1) : other;
            if (!moved.removeAfter().contains(like) && !under.contains(moved.id())) {
                return moved;
            }
            List<String> after = new ArrayList<>(moved.removeAfter());
            after.add(rod.id());
            return Copies.removeAfter(moved, after);
        });
        Draft.putAfter(draft.rods, like, rod);
    }

    private static Optional<Fingering> note(Keywork horn) {
        return horn.fingerings().stream()
                .filter(fingering -> fingering.written().equals("F6") && fingering.standard())
                .findFirst()
                .map(below -> {
                    List<String> open = new ArrayList<>(below.open());
                    open.add(ID);
                    return new Fingering(
                            "note.f-sharp-6", "F#6", below.label(), below.register(), below.peak(), true, open);
                });
    }
}
