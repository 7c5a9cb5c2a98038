package hornwright.bench.plan.feel;

import hornwright.bench.action.Action;
import hornwright.bench.feel.SpringChange;
import hornwright.bench.feel.TouchForce;
import hornwright.bench.feel.TouchForces;
import hornwright.bench.horn.Key;
import hornwright.bench.plan.Because;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import hornwright.bench.plan.measured.ReadNumbers;
import hornwright.bench.survey.Reading;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What each spring pulls: by the pattern, give or take what a horn may differ; and where a touch was weighed, so much that
 * the action asks for the weight that was read. What a weight says beyond the pattern is put on the key's own spring.
 */
final class KnownSprings {
    private static final int SWEEPS = 3;
    private static final int STEPS = 4;
    private static final double NUDGE = 0.05;

    /** A spring is not thought to pull less or more than these shares of its pattern. */
    private static final double FEEBLEST = 0.05;

    private static final double FIERCEST = 4;
    private static final double CLOSE_N = 1e-6;

    private final FeelQuestion ask;
    private final Reasons reasons;
    private final Map<String, PlannedNumber> weights = new LinkedHashMap<>();
    private final Map<String, PlannedNumber> torques = new LinkedHashMap<>();
    private final Set<String> fitted = new HashSet<>();
    private Action action;

    KnownSprings(FeelQuestion ask, Reasons reasons) {
        this.ask = ask;
        this.reasons = reasons;
        this.action = asUsual(ask);
        ReadNumbers read = new ReadNumbers(ask.rules(), reasons);
        for (Key key : ask.keywork().keys()) {
            List<Reading> readings = ask.weights().stream()
                    .filter(reading -> reading.of().equals(key.id()))
                    .toList();
            read.mean("feel/" + key.id() + "/read", "mean of the touch weights read", readings)
                    .filter(weight -> weight.value() > 0)
                    .ifPresent(weight -> weights.put(key.id(), weight));
        }
        fit();
        ask.keywork().keys().forEach(key -> torques.put(key.id(), torque(key)));
    }

    private static Action asUsual(FeelQuestion ask) {
        double share = ask.rules().value("spring.pull-share");
        Action action = Action.asBuilt(ask.keywork());
        for (Key key : ask.keywork().keys()) {
            double torque = key.spring().torqueNmm();
            action = share == 1 ? action : new SpringChange(key.id(), torque, share * torque).in(action);
        }
        return action;
    }

    /** The action with every spring as it is thought to be. */
    Action action() {
        return action;
    }

    Optional<PlannedNumber> weight(String key) {
        return Optional.ofNullable(weights.get(key));
    }

    PlannedNumber torque(String key) {
        PlannedNumber torque = torques.get(key);
        if (torque == null) {
            throw new IllegalArgumentException("no key is called " + key);
        }
        return torque;
    }

    Because.Input input(String key) {
        return Because.Input.of("spring of " + name(key), torque(key));
    }

    private String name(String key) {
        return ask.keywork().keys().get(key).name().display();
    }

    private void fit() {
        for (int sweep = 0; sweep < SWEEPS; sweep++) {
            for (Map.Entry<String, PlannedNumber> weight : weights.entrySet()) {
                fit(weight.getKey(), weight.getValue().value());
            }
        }
    }

    /** Newton's way, the slope by a nudge: a touch weight all but follows its spring in a straight line. */
    private void fit(String key, double wanted) {
        double pattern = ask.keywork().keys().get(key).spring().torqueNmm();
        for (int step = 0; step < STEPS; step++) {
            double torque = action.keywork().keys().get(key).spring().torqueNmm();
            Optional<TouchForce> now = TouchForces.of(action, key);
            Optional<TouchForce> nudged = TouchForces.of(with(key, torque * (1 + NUDGE)), key);
            if (now.isEmpty() || nudged.isEmpty()) {
                return;
            }
            double slope = (nudged.get().newtons() - now.get().newtons()) / (torque * NUDGE);
            double off = wanted - now.get().newtons();
            if (!(slope > 0)) {
                return;
            }
            fitted.add(key);
            if (Math.abs(off) < CLOSE_N) {
                return;
            }
            action = with(key, Math.clamp(torque + off / slope, FEEBLEST * pattern, FIERCEST * pattern));
        }
    }

    private Action with(String key, double torqueNmm) {
        double now = action.keywork().keys().get(key).spring().torqueNmm();
        return new SpringChange(key, now, torqueNmm).in(action);
    }

    private PlannedNumber torque(Key key) {
        PlannedNumber weight = weights.get(key.id());
        double value = action.keywork().keys().get(key.id()).spring().torqueNmm();
        if (weight == null || !fitted.contains(key.id())) {
            return byPattern(key);
        }
        double arm = key.touch() == null ? 0 : key.touch().armMm();
        return reasons.derive(
                "feel/spring/" + key.id(),
                "so strong that the action asks for the touch weight that was read",
                "N mm",
                in -> value + (in[0] - weight.value()) * arm,
                Because.Input.of("touch weight", weight));
    }

    private PlannedNumber byPattern(Key key) {
        PlannedNumber share = reasons.rule(ask.rules(), "spring.pull-share");
        PlannedNumber built = reasons.leaf(
                new Because.FromPattern(
                        "pattern pull " + key.id(),
                        "pull of the spring of " + key.name().display() + " at its hinge in the pattern "
                                + ask.keywork().id(),
                        ask.keywork().id()),
                key.spring().torqueNmm(),
                "N mm",
                0);
        return reasons.derive(
                "feel/spring/" + key.id(),
                "as the pattern has it; a spring nobody has weighed may pull more or less",
                "N mm",
                in -> in[0] * in[1],
                Because.Input.of("pattern", built),
                Because.Input.of("share it pulls", share));
    }
}
