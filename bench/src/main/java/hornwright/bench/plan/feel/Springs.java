package hornwright.bench.plan.feel;

import hornwright.bench.horn.Key;
import hornwright.bench.plan.Because;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import hornwright.bench.plan.feel.FeelAnswer.Finger;
import hornwright.bench.plan.feel.FeelAnswer.Moved;

/** What one changed spring does to one touch: the engine run again, less the engine as it is. */
final class Springs {
    private Springs() {}

    /** @param ratio how many times as strong the spring of {@code changed} becomes */
    static Moved moved(
            Reasons reasons, KnownSprings springs, Finger finger, Key changed, PlannedNumber ratio, String mark) {
        String id = "feel/" + finger.key() + mark;
        PlannedNumber change = reasons.derive(
                id + "/change",
                "the linkage engine run again with that spring, less the linkage engine as it is",
                "N",
                in -> {
                    double share = in[0] / springs.torque(changed.id()).value();
                    return Touches.force(Wires.with(springs.action(), changed.id(), share * in[1]), finger.key())
                            - Touches.force(Wires.with(springs.action(), changed.id(), share), finger.key());
                },
                springs.input(changed.id()),
                Because.Input.of("becomes so many times as strong", ratio));
        PlannedNumber force = reasons.derive(
                id, "touch now + change", "N", in -> in[0] + in[1], finger.input(), Because.Input.of("change", change));
        return new Moved(finger.key(), finger.name(), change, force);
    }
}
