package hornwright.bench.plan.feel;

import hornwright.bench.action.Action;
import hornwright.bench.feel.Evening;
import hornwright.bench.feel.SpringChange;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.KeyGroup;
import hornwright.bench.horn.Rest;
import hornwright.bench.plan.Because;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import hornwright.bench.plan.feel.FeelAnswer.Change;
import hornwright.bench.plan.feel.FeelAnswer.Evened;
import hornwright.bench.plan.feel.FeelAnswer.Finger;
import hornwright.bench.plan.feel.FeelAnswer.Moved;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Evenness of a stack and the fewest springs that bring it about. */
final class Evenings {
    private static final int MOST = 3;

    private final FeelQuestion ask;
    private final KnownSprings springs;
    private final Reasons reasons;

    Evenings(FeelQuestion ask, KnownSprings springs, Reasons reasons) {
        this.ask = ask;
        this.springs = springs;
        this.reasons = reasons;
    }

    /** Empty for a stack of fewer than two touches that rest open. */
    Optional<Evened> of(Hands hand, KeyGroup group, List<Finger> fingers) {
        PlannedNumber aim = reasons.rule(ask.rules(), "touch.even-share");
        List<Finger> open = fingers.stream()
                .filter(finger -> ask.keywork().keys().get(finger.key()).rest() == Rest.OPEN)
                .toList();
        return Evening.of(springs.action(), group, aim.value(), MOST).map(evening -> {
            List<Moved> after = after(open, evening.changes());
            PlannedNumber before =
                    worst(hand, "", open.stream().map(Finger::force).toList());
            PlannedNumber then = worst(hand, "/after", forces(open, after));
            List<Change> changes = evening.changes().stream().map(this::change).toList();
            return new Evened(before, aim, changes, after, then);
        });
    }

    private Change change(SpringChange change) {
        Key key = ask.keywork().keys().get(change.key());
        double becomes = change.toNmm() / change.fromNmm();
        PlannedNumber share = reasons.derive(
                "feel/even/" + key.id(),
                "the change of this spring that leaves the worst touch of the stack nearest to the middle one",
                "",
                in -> becomes - 1,
                springs.input(key.id()));
        return new Change(key.id(), key.name().display(), share);
    }

    private List<Moved> after(List<Finger> open, List<SpringChange> changes) {
        List<Moved> moved = new ArrayList<>();
        if (changes.isEmpty()) {
            return moved;
        }
        for (Finger finger : open) {
            double by = Touches.force(changed(changes), finger.key()) - Touches.force(springs.action(), finger.key());
            moved.add(moved(finger, changes, by));
        }
        return moved;
    }

    private Action changed(List<SpringChange> changes) {
        Action action = springs.action();
        for (SpringChange change : changes) {
            action = change.in(action);
        }
        return action;
    }

    private Moved moved(Finger finger, List<SpringChange> changes, double by) {
        List<Because.Input> inputs =
                changes.stream().map(change -> springs.input(change.key())).toList();
        PlannedNumber change = reasons.derive(
                "feel/" + finger.key() + "/even/change",
                "the linkage engine run again with the springs changed, less the linkage engine as it is",
                "N",
                in -> by * in[0] / inputs.getFirst().value(),
                inputs);
        PlannedNumber force = reasons.derive(
                "feel/" + finger.key() + "/even",
                "touch now + change",
                "N",
                in -> in[0] + in[1],
                finger.input(),
                Because.Input.of("change", change));
        return new Moved(finger.key(), finger.name(), change, force);
    }

    private static List<PlannedNumber> forces(List<Finger> open, List<Moved> after) {
        return after.isEmpty()
                ? open.stream().map(Finger::force).toList()
                : after.stream().map(Moved::force).toList();
    }

    private PlannedNumber worst(Hands hand, String mark, List<PlannedNumber> forces) {
        List<Because.Input> inputs = new ArrayList<>();
        for (int i = 0; i < forces.size(); i++) {
            inputs.add(Because.Input.of("touch " + (i + 1), forces.get(i)));
        }
        return reasons.derive(
                "feel/" + hand.least() + "/worst" + mark,
                "how far the touch that is furthest from the middle one is from it, as a share",
                "",
                Evenings::worst,
                inputs);
    }

    static double worst(double[] forces) {
        double[] sorted = forces.clone();
        Arrays.sort(sorted);
        int middle = sorted.length / 2;
        double median = sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
        return Arrays.stream(forces)
                .map(force -> Math.abs(force / median - 1))
                .max()
                .orElse(0);
    }
}
