package hornwright.bench.feel;

import hornwright.bench.action.Action;
import hornwright.bench.horn.ClosingSet;
import hornwright.bench.horn.Hold;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Rest;
import hornwright.bench.horn.Touch;
import hornwright.engines.linkage.Balance;
import hornwright.engines.linkage.Equilibrium;
import hornwright.engines.linkage.Press;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoublePredicate;
import java.util.stream.Collectors;

/**
 * Touch forces of a whole action. A touch that closes has done its work when every cup it closes or holds is shut, a
 * touch that opens when every cup it can open has left its hole. Where a hold matters only with another key let go, that
 * key is let go.
 */
public final class TouchForces {
    /** No finger presses harder; a touch that is not done by then is not listed. */
    private static final double MOST = 8;

    private static final int HALVINGS = 30;
    private static final double METRES = 1e-3;

    private final Action action;
    private final Keywork keywork;

    private TouchForces(Action action) {
        this.action = action;
        this.keywork = action.keywork();
    }

    /** Every touch in the order of the keywork. */
    public static List<TouchForce> of(Action action) {
        TouchForces forces = new TouchForces(action);
        return action.keywork().keys().stream()
                .flatMap(key -> forces.of(key).stream())
                .toList();
    }

    /** One touch; empty when the key has none, or no finger could do its work. */
    public static Optional<TouchForce> of(Action action, String key) {
        return new TouchForces(action).of(action.keywork().keys().get(key));
    }

    private Optional<TouchForce> of(Key key) {
        Touch touch = key.touch();
        if (touch == null) {
            return Optional.empty();
        }
        Set<String> closed = closedBy(key);
        boolean closes = !closed.isEmpty();
        Balance balance = Balance.of(action.holdingAway(letGo(key)).mechanism());
        Set<Integer> work = closes ? places(closed) : openedBy(balance, key.id(), touch);
        if (work.isEmpty()) {
            return Optional.empty();
        }
        return least(newtons -> {
                    Equilibrium at = pressed(balance, key.id(), touch, newtons);
                    return work.stream()
                            .allMatch(cup -> closes
                                    ? at.cups().gap()[cup] <= 0
                                    : at.cups().force()[cup] <= 0);
                })
                .map(newtons -> new TouchForce(key.id(), newtons, closes));
    }

    /** Own open cup, the cups of its set, the cups it holds shut. */
    private Set<String> closedBy(Key key) {
        Set<String> cups = new LinkedHashSet<>();
        keywork.cupOf(key).filter(cup -> cup.rest() == Rest.OPEN).ifPresent(cup -> cups.add(cup.id()));
        keywork.sets().stream()
                .filter(set -> set.press().equals(key.id()))
                .map(ClosingSet::closes)
                .forEach(cups::addAll);
        keywork.holds().stream()
                .filter(hold -> hold.press().equals(key.id()))
                .map(Hold::holds)
                .forEach(cups::addAll);
        return cups;
    }

    private Set<String> letGo(Key key) {
        return keywork.holds().stream()
                .filter(hold -> hold.press().equals(key.id()))
                .map(Hold::whileReleased)
                .filter(Objects::nonNull)
                .collect(Collectors.toSet());
    }

    private Set<Integer> places(Set<String> cups) {
        return cups.stream()
                .map(cup -> keywork.cups().list().indexOf(keywork.cups().get(cup)))
                .collect(Collectors.toSet());
    }

    /** Cups that bear on their holes at rest and leave them under a heavy finger. */
    private Set<Integer> openedBy(Balance balance, String key, Touch touch) {
        double[] rest = balance.atRest().cups().force().clone();
        double[] pressed = pressed(balance, key, touch, MOST).cups().force();
        Set<Integer> opened = new LinkedHashSet<>();
        for (int cup = 0; cup < rest.length; cup++) {
            if (rest[cup] > 0 && pressed[cup] <= 0) {
                opened.add(cup);
            }
        }
        return opened;
    }

    private static Equilibrium pressed(Balance balance, String key, Touch touch, double newtons) {
        return balance.under(List.of(new Press(key, newtons, METRES * touch.signedArmMm())));
    }

    private static Optional<Double> least(DoublePredicate done) {
        if (!done.test(MOST)) {
            return Optional.empty();
        }
        double not = 0;
        double yes = MOST;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (not + yes) / 2;
            if (done.test(middle)) {
                yes = middle;
            } else {
                not = middle;
            }
        }
        return Optional.of(yes);
    }
}
