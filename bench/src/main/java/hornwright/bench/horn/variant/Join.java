package hornwright.bench.horn.variant;

import hornwright.bench.horn.ClosingSet;
import hornwright.bench.horn.Hold;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Link;
import hornwright.bench.horn.LinkKind;
import hornwright.bench.horn.Owner;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.PlaceKind;
import hornwright.bench.horn.Spring;
import hornwright.bench.horn.Touch;
import java.util.EnumSet;
import java.util.Objects;
import java.util.Set;

/**
 * Makes one piece of a touch and the cup it works. Arms shrink with the rotation they now share with the cup, so every
 * other contact keeps its gaps; the spring takes over what both springs did, so the finger feels the force it felt.
 */
final class Join {
    /** What lies under the finger or along the lever goes with it; its foot, spring and contact are gone. */
    private static final Set<PlaceKind> GO_ALONG = EnumSet.of(PlaceKind.ROLLER, PlaceKind.PEARL, PlaceKind.GUIDE);

    private Join() {}

    static Keywork over(Keywork horn, Link link) {
        Key touch = horn.keys().get(link.driver());
        Key cup = horn.keys().get(link.follower());
        double share = Math.abs(travel(touch) / travel(cup));
        Draft draft = new Draft(horn);
        Draft.put(draft.keys, joined(horn, link, share));
        draft.links.replaceAll(other -> moved(other, link, touch.id(), cup.id(), share));
        draft.sets.replaceAll(set -> set.press().equals(touch.id()) ? new ClosingSet(cup.id(), set.closes()) : set);
        draft.holds.replaceAll(hold ->
                hold.press().equals(touch.id()) ? new Hold(cup.id(), hold.holds(), hold.whileReleased()) : hold);
        draft.places.replaceAll(place ->
                goesAlong(horn, place, touch) ? Copies.place(place, place.at(), new Owner.OfKey(cup.id())) : place);
        return Removal.of(draft.done(), Set.of(touch.id()), Set.of(link.id()));
    }

    private static double travel(Key key) {
        return key.restRotationRad() - key.pressedRotationRad();
    }

    private static boolean goesAlong(Keywork horn, Place place, Key touch) {
        String beneath = place.beneath();
        PlaceKind kind =
                beneath == null ? place.kind() : horn.places().get(beneath).kind();
        return place.belongsTo().equals(new Owner.OfKey(touch.id())) && GO_ALONG.contains(kind);
    }

    private static Key joined(Keywork horn, Link link, double share) {
        Key touch = horn.keys().get(link.driver());
        Key cup = horn.keys().get(link.follower());
        Touch finger = Objects.requireNonNull(touch.touch(), touch.id() + " has no touch");
        double carried =
                link.driverArmMm() / link.followerArmMm() * cup.spring().torqueNmm();
        double torque = Copies.round(share * (touch.spring().torqueNmm() + carried), 2);
        Spring spring = Copies.torque(cup.spring(), torque);
        boolean closes = cup.pressedRotationRad() < cup.restRotationRad();
        double arm = Copies.round(finger.armMm() * share, 1);
        double force = Copies.force(finger.forceN() + seating(horn, touch, cup, share) / arm);
        return Copies.played(cup, Copies.touch(finger, arm, closes, force), spring, cup.tube());
    }

    /**
     * A touch in one piece with its cup presses that pad a little further until the next cup it closes is down too, by as
     * much as the cork between them gives: torque in N mm.
     */
    private static double seating(Keywork horn, Key touch, Key cup, double share) {
        double most = 0;
        for (Link link : horn.linksFrom(touch)) {
            Key next = horn.keys().get(link.follower());
            if (link.kind() == LinkKind.CLOSES && !next.equals(cup)) {
                double gives = next.spring().torqueNmm() / link.followerArmMm() / link.stiffnessNPerMm();
                most = Math.max(most, padNmmPerRad(horn, cup) * gives / (link.driverArmMm() * share));
            }
        }
        return most;
    }

    private static double padNmmPerRad(Keywork horn, Key key) {
        return horn.cupOf(key)
                .map(cup -> cup.stiffnessNPerMm(horn.holeOf(cup)) * cup.armMm() * cup.armMm())
                .orElse(0.0);
    }

    /** Contacts the touch had with other keys. */
    private static Link moved(Link other, Link gone, String touch, String cup, double share) {
        if (other.id().equals(gone.id())) {
            return other;
        }
        if (other.driver().equals(touch)) {
            return Copies.driver(other, cup, other.driverArmMm() * share);
        }
        return other.follower().equals(touch) ? Copies.follower(other, cup, other.followerArmMm() * share) : other;
    }
}
