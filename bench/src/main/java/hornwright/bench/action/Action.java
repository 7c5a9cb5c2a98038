package hornwright.bench.action;

import hornwright.bench.horn.ClosingSet;
import hornwright.bench.horn.Coupling;
import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Limits;
import hornwright.bench.horn.Link;
import hornwright.bench.horn.Rest;
import hornwright.bench.horn.Spring;
import hornwright.bench.horn.Stop;
import hornwright.bench.horn.Touch;
import hornwright.engines.linkage.Landing;
import hornwright.engines.linkage.Mechanism;
import hornwright.engines.linkage.Press;
import java.util.ArrayList;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Set;

/**
 * A keywork with what lies in its contacts.
 *
 * @param down keys held down: a link that works only in one state of such a key (the octave vents by G) is in or out
 *     accordingly
 * @param away keys held at their pressed rotation out of the way, as by another finger
 */
public record Action(Keywork keywork, Thickness thickness, Set<String> down, Set<String> away) {
    /** Stiff enough to hold a key in place against any spring, N mm per rad. */
    private static final double HELD = 1e5;

    private static final double METRES = 1e-3;
    private static final double NEWTON_METRES = 1e-3;
    private static final double NEWTONS_PER_METRE = 1e3;

    public Action {
        down = Set.copyOf(down);
        away = Set.copyOf(away);
    }

    /** As built, no key held. */
    public static Action asBuilt(Keywork keywork) {
        return new Action(keywork, Thickness.asBuilt(keywork), Set.of(), Set.of());
    }

    public Action with(Thickness changed) {
        return new Action(keywork, changed, down, away);
    }

    public Action holdingDown(Set<String> keys) {
        return new Action(keywork, thickness, keys, away);
    }

    public Action holdingAway(Set<String> keys) {
        return new Action(keywork, thickness, down, keys);
    }

    /** The engine's view: keys, cups and links in the order of the keywork. Links out of action are left out. */
    public Mechanism mechanism() {
        List<Mechanism.Stop> stops = new ArrayList<>();
        for (Key key : keywork.keys()) {
            key.stops().forEach(stop -> stops.add(stop(key, stop)));
        }
        return new Mechanism(
                keywork.keys().stream()
                        .map(key -> new Mechanism.Key(key.id(), key.tube().flexRadPerNmm() / NEWTON_METRES))
                        .toList(),
                keywork.cups().stream().map(this::cup).toList(),
                stops,
                keywork.links().where(this::engaged).stream().map(this::link).toList(),
                keywork.keys().stream().map(this::spring).toList());
    }

    /** A finger on the touch of a key, so many times as hard as the touch was made for. */
    public static Press press(Key key, double times) {
        Touch touch = key.touch();
        if (touch == null) {
            throw new NoSuchElementException(key.id() + " has no touch");
        }
        return new Press(key.id(), times * touch.forceN(), METRES * touch.signedArmMm());
    }

    /** The sets of the keywork, each pressed so many times as hard as its touch was made for. */
    public List<Landing> landings(double times) {
        return keywork.sets().stream().map(set -> landing(set, times)).toList();
    }

    private Landing landing(ClosingSet set, double times) {
        return new Landing(press(keywork.keys().get(set.press()), times), set.closes());
    }

    private boolean engaged(Link link) {
        Coupling coupling = link.coupling();
        return coupling == null || stateOf(keywork.keys().get(coupling.whenKey())) == coupling.whenState();
    }

    private Rest stateOf(Key key) {
        Touch touch = key.touch();
        if (!down.contains(key.id()) || touch == null) {
            return key.rest();
        }
        return touch.closes() ? Rest.CLOSED : Rest.OPEN;
    }

    private Mechanism.Cup cup(Cup cup) {
        double stiffness = cup.stiffnessNPerMm(keywork.holeOf(cup));
        return new Mechanism.Cup(
                cup.id(), cup.key(), METRES * cup.armMm(), NEWTONS_PER_METRE * stiffness, METRES * cup.offsetMm());
    }

    private Mechanism.Stop stop(Key key, Stop stop) {
        return new Mechanism.Stop(
                stop.id(),
                key.id(),
                METRES * stop.armMm(),
                METRES * stop.clearanceMm(),
                METRES * thickness.mm(stop.id()),
                NEWTONS_PER_METRE * stop.stiffnessNPerMm(),
                stop.limits() == Limits.OPENING ? Mechanism.Limits.OPENING : Mechanism.Limits.CLOSING);
    }

    private Mechanism.Link link(Link link) {
        return new Mechanism.Link(
                link.id(),
                link.driver(),
                METRES * link.driverArmMm(),
                link.follower(),
                METRES * link.followerArmMm(),
                METRES * link.spaceMm(),
                METRES * thickness.mm(link.id()),
                NEWTONS_PER_METRE * link.stiffnessNPerMm(),
                link.kind().sense() > 0 ? Mechanism.Sense.CLOSES : Mechanism.Sense.OPENS);
    }

    private Mechanism.Spring spring(Key key) {
        if (away.contains(key.id())) {
            double at = key.pressedRotationRad();
            return new Mechanism.Spring(
                    key.id(),
                    NEWTON_METRES * HELD * Math.abs(at),
                    NEWTON_METRES * HELD,
                    at < 0 ? Mechanism.Towards.CLOSED : Mechanism.Towards.OPEN);
        }
        Spring spring = key.spring();
        return new Mechanism.Spring(
                key.id(),
                NEWTON_METRES * spring.torqueNmm(),
                NEWTON_METRES * spring.rateNmmPerRad(),
                spring.towards() == Rest.OPEN ? Mechanism.Towards.OPEN : Mechanism.Towards.CLOSED);
    }
}
