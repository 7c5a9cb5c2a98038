package hornwright.bench.horn.variant;

import hornwright.bench.horn.Clearance;
import hornwright.bench.horn.Coupling;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Link;
import hornwright.bench.horn.OctaveState;
import hornwright.bench.horn.Owner;
import hornwright.bench.horn.Position;
import hornwright.bench.horn.Post;
import hornwright.bench.horn.Rest;
import hornwright.bench.horn.Rod;
import hornwright.bench.horn.Touch;
import hornwright.bench.horn.TradeName;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Two thumb levers, one for each octave vent, in place of one lever with a switch that G works. The second is made like the
 * first and turns beside it on the same rod.
 */
final class OctavePair {
    private static final String SECOND = "octave-thumb-upper";
    /** Room between the two tubes on the rod, bench judgement. */
    private static final double BETWEEN_MM = 5;

    private OctavePair() {}

    /** The contact through the switch that works in this state of G. */
    static Optional<Link> coupled(Keywork horn, Rest when) {
        return horn.links().stream()
                .filter(link -> {
                    Coupling coupling = link.coupling();
                    return coupling != null && coupling.whenState() == when;
                })
                .findFirst();
    }

    static boolean canBeMade(Keywork horn) {
        return coupled(horn, Rest.OPEN).isPresent()
                && coupled(horn, Rest.CLOSED).isPresent();
    }

    static Keywork made(Keywork horn) {
        Link neck = coupled(horn, Rest.OPEN).orElseThrow();
        Key first = horn.keys().get(neck.driver());
        double along = first.tube().lengthMm() + BETWEEN_MM;
        Twin twin = new Twin(SECOND, TradeName.of("upper octave lever", "neck octave lever"), first, along, 0);
        Draft draft = new Draft(horn);
        Touch thumb = Objects.requireNonNull(first.touch());
        Touch second = new Touch(thumb.kind(), twin.at(thumb.at()), thumb.armMm(), thumb.closes(), thumb.forceN());
        Draft.putAfter(draft.keys, first.id(), twin.key(first.rod(), first.pressedRotationRad(), second, first.tube()));
        draft.places.addAll(twin.places(draft, new Owner.OfKey(first.id()), new Owner.OfKey(SECOND)));
        Draft.put(draft.rods, longer(horn.rodOf(first), along));
        Draft.put(draft.links, Copies.driver(neck, SECOND, neck.driverArmMm()));
        return states(withoutSwitch(draft.done(), neck), first);
    }

    private static Rod longer(Rod rod, double byMm) {
        double to = Copies.round(rod.toMm() + byMm, 1);
        List<Post> posts = new ArrayList<>(rod.posts());
        Post last = posts.removeLast();
        posts.add(new Post(last.id(), new Position(to, last.at().angleDeg())));
        return Copies.rod(rod, rod.order(), to, rod.angleDeg(), posts, rod.removeAfter());
    }

    private static Keywork withoutSwitch(Keywork horn, Link neck) {
        Set<String> switches = new HashSet<>();
        switches.add(Objects.requireNonNull(neck.coupling()).through());
        return Removal.ofKeys(horn, switches);
    }

    private static Keywork states(Keywork horn, Key first) {
        Draft draft = new Draft(horn);
        draft.octaveStates.clear();
        draft.octaveStates.add(state(horn, "both levers up", null));
        draft.octaveStates.add(state(horn, "lower lever down", first));
        draft.octaveStates.add(state(horn, "upper lever down", horn.keys().get(SECOND)));
        return draft.done();
    }

    private static OctaveState state(Keywork horn, String name, @Nullable Key down) {
        List<Clearance> clearances = new ArrayList<>();
        String vent = null;
        for (Link link : horn.links()) {
            Key vented = horn.keys().get(link.follower());
            Optional<String> hole = horn.cupOf(vented).map(cup -> cup.hole());
            if (hole.isEmpty() || !horn.holes().get(hole.get()).octaveVent()) {
                continue;
            }
            boolean pressed = down != null && link.driver().equals(down.id());
            vent = pressed ? hole.get() : vent;
            Key driver = horn.keys().get(link.driver());
            double gap =
                    pressed ? link.gapMm(driver.pressedRotationRad(), vented.pressedRotationRad()) : link.gapMm(0, 0);
            clearances.add(new Clearance(link.id(), Math.max(0, Copies.round(gap, 3))));
        }
        return new OctaveState(name, down == null ? List.of() : List.of(down.id()), vent, clearances);
    }
}
