package hornwright.bench.plan.feel;

import hornwright.bench.action.Action;
import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Link;
import hornwright.bench.horn.Rest;
import hornwright.bench.plan.Because;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import hornwright.bench.plan.feel.FeelAnswer.Balance;
import hornwright.bench.plan.feel.FeelAnswer.Finger;
import hornwright.bench.plan.feel.FeelAnswer.Moved;
import hornwright.bench.plan.feel.FeelAnswer.Try;
import hornwright.bench.plan.feel.Wires.Sized;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Cups that their own spring would open and a stronger lever holds shut, as G sharp: which spring wins, and who pays. */
final class Balances {
    /** A touch that moves by less than this is not felt to move, N. */
    private static final double FELT = 1e-4;

    private final FeelQuestion ask;
    private final KnownSprings springs;
    private final Wires wires;
    private final List<Finger> fingers;
    private final Reasons reasons;

    Balances(FeelQuestion ask, KnownSprings springs, Wires wires, List<Finger> fingers, Reasons reasons) {
        this.ask = ask;
        this.springs = springs;
        this.wires = wires;
        this.fingers = fingers;
        this.reasons = reasons;
    }

    List<Balance> all() {
        List<Balance> all = new ArrayList<>();
        for (Link link : ask.keywork().links()) {
            Key lever = ask.keywork().keys().get(link.driver());
            Key follower = ask.keywork().keys().get(link.follower());
            Optional<Cup> cup = ask.keywork().cupOf(follower).filter(each -> each.rest() == Rest.CLOSED);
            boolean against =
                    lever.spring().towards() == Rest.CLOSED && follower.spring().towards() == Rest.OPEN;
            if (against && cup.isPresent() && link.kind().sense() > 0) {
                all.add(balance(link, lever, follower, cup.get()));
            }
        }
        return all;
    }

    private Balance balance(Link link, Key lever, Key follower, Cup cup) {
        List<Try> tries = new ArrayList<>();
        tries.add(new Try("as it is", held(cup, List.of(lever, follower)), List.of()));
        wires.thinner(lever).ifPresent(size -> tries.add(tried(cup, lever, follower, size)));
        wires.thicker(lever).ifPresent(size -> tries.add(tried(cup, lever, follower, size)));
        wires.thinner(follower).ifPresent(size -> tries.add(tried(cup, follower, lever, size)));
        wires.thicker(follower).ifPresent(size -> tries.add(tried(cup, follower, lever, size)));
        PlannedNumber times = reasons.derive(
                "feel/" + follower.id() + "/times",
                "pull of the lever at their contact over what the cup's spring needs there",
                "",
                in -> in[0] * link.followerArmMm() / (in[1] * link.driverArmMm()),
                springs.input(lever.id()),
                springs.input(follower.id()));
        return new Balance(
                lever.id(),
                follower.id(),
                lever.name().display(),
                follower.name().display(),
                held(cup, List.of(lever, follower)),
                times,
                reasons.rule(ask.rules(), "balance.held-least_N"),
                tries);
    }

    private PlannedNumber held(Cup cup, List<Key> keys) {
        int index = ask.keywork().cups().list().indexOf(cup);
        return reasons.derive(
                "feel/" + cup.id() + "/held",
                "force of the pad on its hole, nothing pressed: the linkage engine at rest",
                "N",
                in -> {
                    Action action = springs.action();
                    for (int i = 0; i < keys.size(); i++) {
                        action = withPull(action, keys.get(i).id(), in[i]);
                    }
                    return onHole(action, index);
                },
                keys.stream().map(key -> springs.input(key.id())).toList());
    }

    private static double onHole(Action action, int cup) {
        return hornwright.engines.linkage.Balance.of(action.mechanism())
                .atRest()
                .cups()
                .force()[cup];
    }

    private Try tried(Cup cup, Key changed, Key left, Sized size) {
        Action other = Wires.with(springs.action(), changed.id(), size.ratio().value());
        List<Moved> moved = new ArrayList<>();
        for (Finger finger : fingers) {
            double by = Touches.force(other, finger.key()) - Touches.force(springs.action(), finger.key());
            if (Math.abs(by) > FELT) {
                moved.add(
                        Springs.moved(reasons, springs, finger, changed, size.ratio(), "/" + changed.id() + size.mm()));
            }
        }
        return new Try(
                "%s spring %s".formatted(changed.name().display(), size.word()),
                heldWith(cup, changed, left, size),
                moved);
    }

    private @Nullable PlannedNumber heldWith(Cup cup, Key changed, Key other, Sized size) {
        int index = ask.keywork().cups().list().indexOf(cup);
        PlannedNumber held = reasons.derive(
                "feel/" + cup.id() + "/held/" + changed.id() + size.mm(),
                "force of the pad on its hole: the linkage engine at rest, run again with the other wire",
                "N",
                in -> {
                    Action action = withPull(springs.action(), changed.id(), in[0] * in[1]);
                    return onHole(withPull(action, other.id(), in[2]), index);
                },
                springs.input(changed.id()),
                Because.Input.of("other wire pulls so many times as hard", size.ratio()),
                springs.input(other.id()));
        return held.value() > 0 ? held : null;
    }

    /** The action with that spring pulling so much. */
    private Action withPull(Action action, String key, double torqueNmm) {
        return Wires.with(action, key, torqueNmm / springs.torque(key).value());
    }
}
