package hornwright.bench.plan.feel;

import hornwright.bench.action.Action;
import hornwright.bench.feel.SpringChange;
import hornwright.bench.feel.TouchForce;
import hornwright.bench.feel.TouchForces;
import hornwright.bench.horn.Key;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Link;
import hornwright.bench.plan.Because;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import hornwright.bench.plan.measured.CupGeometry;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The force each touch asks for: weighed, or reckoned from every spring that bears on it and the arm of the touch. */
final class Touches {
    /** A spring that moves a touch by less than this share of its own change does not bear on it. */
    private static final double BEARS = 1e-3;

    private static final double NUDGE = 0.1;

    private final FeelQuestion ask;
    private final KnownSprings springs;
    private final Reasons reasons;

    Touches(FeelQuestion ask, KnownSprings springs, Reasons reasons) {
        this.ask = ask;
        this.springs = springs;
        this.reasons = reasons;
    }

    /** Empty for a key without a touch, or whose work no finger can do. */
    Optional<PlannedNumber> force(Key key) {
        Optional<PlannedNumber> weight = springs.weight(key.id());
        return weight.isPresent()
                ? weight
                : TouchForces.of(springs.action(), key.id()).map(now -> reckoned(key, now));
    }

    private PlannedNumber reckoned(Key key, TouchForce now) {
        List<String> bearing = bearing(key, now.newtons());
        double armMm = key.touch() == null ? 1 : key.touch().armMm();
        PlannedNumber arm = CupGeometry.pattern(
                reasons, ask.rules(), ask.keywork(), "touch arm " + key.id(), armMm, "arm.from-pattern_mm");
        List<Because.Input> inputs =
                new ArrayList<>(bearing.stream().map(springs::input).toList());
        inputs.add(Because.Input.of("axis to touch", arm));
        String work = now.closes() ? "every cup it shuts or holds is shut" : "the cups it opens have left their holes";
        return reasons.derive(
                "feel/" + key.id(),
                "least force at the touch at which " + work + ": the linkage engine, all springs and links together",
                "N",
                in -> force(key.id(), bearing, in) * armMm / in[bearing.size()],
                inputs);
    }

    /** What a touch asks for with some springs otherwise. */
    double force(String key, List<String> changed, double[] torques) {
        Action action = springs.action();
        for (int i = 0; i < changed.size(); i++) {
            double now = springs.torque(changed.get(i)).value();
            action = torques[i] == now ? action : new SpringChange(changed.get(i), now, torques[i]).in(action);
        }
        return force(action, key);
    }

    /** As the engine has it now; a finger that can no longer do its work is not a number. */
    static double force(Action action, String key) {
        return TouchForces.of(action, key).map(TouchForce::newtons).orElse(Double.NaN);
    }

    /** The springs a finger works against, its own first. */
    private List<String> bearing(Key key, double newtons) {
        return near(key).stream().filter(near -> bears(near, key, newtons)).toList();
    }

    private boolean bears(String spring, Key key, double newtons) {
        double torque = springs.torque(spring).value();
        double moved = force(key.id(), List.of(spring), new double[] {torque * (1 + NUDGE)});
        return Math.abs(moved - newtons) > BEARS * NUDGE * newtons;
    }

    /** The key, all that it moves directly or through others, and what else moves those. */
    private Set<String> near(Key key) {
        Keywork keywork = ask.keywork();
        Set<String> moved = new LinkedHashSet<>(List.of(key.id()));
        int before = 0;
        while (before < moved.size()) {
            before = moved.size();
            for (Link link : keywork.links()) {
                if (moved.contains(link.driver())) {
                    moved.add(link.follower());
                }
            }
        }
        Set<String> near = new LinkedHashSet<>(moved);
        for (Link link : keywork.links()) {
            if (moved.contains(link.follower())) {
                near.add(link.driver());
            }
        }
        return near;
    }
}
