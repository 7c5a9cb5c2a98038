package hornwright.bench.feel;

import hornwright.bench.action.Action;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.KeyGroup;
import hornwright.bench.horn.Rest;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The fewest springs to change so that the touches of a group that rest open ask for about the same.
 *
 * @param targetN the middle of what the touches ask for now
 * @param before as it is
 * @param changes one spring after another, the one that helps most first; empty when it is even already
 * @param after the engine run again with the changes
 */
public record Evening(
        KeyGroup group, double targetN, List<TouchForce> before, List<SpringChange> changes, List<TouchForce> after) {
    /** A spring is not changed by more than this share in one go; beyond it another remedy is called for. */
    private static final double MOST = 0.4;

    /** Narrows a change to a quarter of a hundredth; no hand sets a spring finer. */
    private static final int SEARCH = 12;

    public Evening {
        before = List.copyOf(before);
        changes = List.copyOf(changes);
        after = List.copyOf(after);
    }

    /**
     * @param within share of the target that counts as even: 0.1 is a tenth either way
     * @param most springs to change
     */
    public static Optional<Evening> of(Action action, KeyGroup group, double within, int most) {
        List<TouchForce> before = forces(action, group);
        if (before.size() < 2) {
            return Optional.empty();
        }
        double target = median(before);
        List<SpringChange> changes = new ArrayList<>();
        Action now = action;
        while (changes.size() < most && worst(forces(now, group), target) > within) {
            Optional<SpringChange> best = best(now, group, target);
            if (best.isEmpty()) {
                break;
            }
            changes.add(best.get());
            now = best.get().in(now);
        }
        return Optional.of(new Evening(group, target, before, changes, forces(now, group)));
    }

    /** How far the worst touch is from the target, as a share of it. */
    public double unevennessBefore() {
        return worst(before, targetN);
    }

    public double unevennessAfter() {
        return worst(after, targetN);
    }

    private static List<TouchForce> forces(Action action, KeyGroup group) {
        return action.keywork().group(group).stream()
                .filter(key -> key.rest() == Rest.OPEN)
                .flatMap(key -> TouchForces.of(action, key.id()).stream())
                .toList();
    }

    private static double median(List<TouchForce> forces) {
        double[] sorted =
                forces.stream().mapToDouble(TouchForce::newtons).sorted().toArray();
        int middle = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
    }

    private static double worst(List<TouchForce> forces, double target) {
        return forces.stream()
                .mapToDouble(force -> Math.abs(force.newtons() / target - 1))
                .max()
                .orElse(0);
    }

    /** The one change that leaves the worst touch nearest to the target; empty when none helps. */
    private static Optional<SpringChange> best(Action action, KeyGroup group, double target) {
        double now = worst(forces(action, group), target);
        record Tried(SpringChange change, double worst) {}
        return action.keywork().group(group).stream()
                .map(key -> bestOf(action, key, group, target))
                .map(change -> new Tried(change, worst(forces(change.in(action), group), target)))
                .filter(tried -> tried.worst() < now - 1e-3)
                .min(Comparator.comparingDouble(Tried::worst))
                .map(Tried::change);
    }

    /** Golden section: the worst deviation falls, then rises, as one spring is made stronger. */
    private static SpringChange bestOf(Action action, Key key, KeyGroup group, double target) {
        double torque = key.spring().torqueNmm();
        double golden = (Math.sqrt(5) - 1) / 2;
        double low = 1 - MOST;
        double high = 1 + MOST;
        for (int i = 0; i < SEARCH; i++) {
            double left = high - golden * (high - low);
            double right = low + golden * (high - low);
            if (tried(action, key, group, target, torque * left) < tried(action, key, group, target, torque * right)) {
                high = right;
            } else {
                low = left;
            }
        }
        return new SpringChange(key.id(), torque, torque * (low + high) / 2);
    }

    private static double tried(Action action, Key key, KeyGroup group, double target, double torque) {
        SpringChange change = new SpringChange(key.id(), key.spring().torqueNmm(), torque);
        return worst(forces(change.in(action), group), target);
    }
}
