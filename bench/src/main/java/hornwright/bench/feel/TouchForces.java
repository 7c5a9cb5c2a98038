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
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Collectors;

/**
 * Touch forces of a whole action. A touch that closes has done its work when every cup it closes or holds is shut, a
 * touch that opens when every cup it can open has left its hole. Where a hold matters only with another key let go, that
 * key is let go.
 */
public final class TouchForces {
    /** No finger presses harder; a touch that is not done by then is not listed. */
    private static final double MOST = 8;

    private static final int STEPS = 100;

    /** Ends nearer than this are one force, N; gaps smaller than this are none, m. */
    private static final double CLOSE_N = 1e-9;

    private static final double NOTHING_M = 1e-13;
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
        int sign = closes ? 1 : -1;
        return least(newtons -> {
                    double[] gaps =
                            pressed(balance, key.id(), touch, newtons).cups().gap();
                    return work.stream()
                            .mapToDouble(cup -> sign * gaps[cup])
                            .max()
                            .orElse(0);
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

    /**
     * The force at which nothing is left to do. What is left, in m, falls in straight pieces as the finger presses harder: two
     * points on the last piece give its end, and halving in turn brings two points onto it.
     */
    private static Optional<Double> least(DoubleUnaryOperator left) {
        double low = 0;
        double high = MOST;
        double atLow = left.applyAsDouble(low);
        if (left.applyAsDouble(high) > 0) {
            return Optional.empty();
        }
        double before = Double.NaN;
        double atBefore = Double.NaN;
        for (int step = 0; step < STEPS && high - low > CLOSE_N && atLow > 0; step++) {
            double along = low + atLow * (low - before) / (atBefore - atLow);
            double force = step % 2 == 1 && along > low && along < high ? along : (low + high) / 2;
            double there = left.applyAsDouble(force);
            if (Math.abs(there) < NOTHING_M) {
                return Optional.of(force);
            }
            if (there < 0) {
                high = force;
            } else {
                before = low;
                atBefore = atLow;
                low = force;
                atLow = there;
            }
        }
        return Optional.of(high);
    }
}
