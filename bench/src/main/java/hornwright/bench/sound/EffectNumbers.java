package hornwright.bench.sound;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Fingering;
import hornwright.bench.plan.Because;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What heights do to notes, each with the reasons it stands on. */
final class EffectNumbers {
    /** Less is not told, cents. */
    static final double TOLD = 0.5;

    private static final double STEEPEST = 2;

    private final SoundQuestion ask;
    private final Openings openings;
    private final HeightEffects effects;
    private final Reasons reasons;
    private final List<Cup> cups;
    private final List<Fingering> fingerings;

    EffectNumbers(SoundQuestion ask, Openings openings, HeightEffects effects, Reasons reasons) {
        this.ask = ask;
        this.openings = openings;
        this.effects = effects;
        this.reasons = reasons;
        cups = ask.keywork().cups().list();
        fingerings = ask.keywork().fingerings().list();
    }

    /** Cents for each millimetre at the front edge. */
    PlannedNumber perMm(Fingering fingering, Cup cup) {
        double slope = effects.perMm()[fingerings.indexOf(fingering)][cups.indexOf(cup)];
        PlannedNumber times = reasons.rule(ask.rules(), "sound.effect-times");
        return reasons.derive(
                "sound/perMm/%s/%s".formatted(fingering.id(), cup.id()),
                "what the air column of this horn says one millimetre at the front edge of %s does to %s x what it does on a real horn"
                        .formatted(ask.keywork().nameOf(cup).display(), WrittenNote.shown(fingering)),
                "cents/mm",
                in -> slope * in[0],
                List.of(
                        Because.Input.of("real over reckoned", times),
                        Because.Input.of("height it is reckoned at", openings.from(cup))));
    }

    /** The cups that move a note most. */
    List<SoundAnswer.PerMm> strongest(Fingering fingering, int most) {
        double[] slopes = effects.perMm()[fingerings.indexOf(fingering)];
        return cups.stream()
                .filter(cup -> Math.abs(slopes[cups.indexOf(cup)]) >= TOLD
                        && !ask.keywork().holeOf(cup).octaveVent())
                .sorted(java.util.Comparator.comparingDouble(cup -> -Math.abs(slopes[cups.indexOf(cup)])))
                .limit(most)
                .map(cup -> new SoundAnswer.PerMm(cup, perMm(fingering, cup)))
                .toList();
    }

    /** What one changed cup does to a note, about: along the straight line. */
    PlannedNumber alone(Fingering fingering, Cup cup, double toMm) {
        return reasons.derive(
                "sound/effect/%s/%s".formatted(fingering.id(), cup.id()),
                "about: cents for each mm x (height aimed at - height as played)",
                "cents",
                in -> in[0] * (in[1] - in[2]),
                Because.Input.of("cents for each mm", perMm(fingering, cup)),
                Because.Input.of("height aimed at", openings.set(cup, toMm)),
                Because.Input.of("height as played", openings.from(cup)));
    }

    boolean moves(Fingering fingering, Cup cup) {
        return effects.perMm()[fingerings.indexOf(fingering)][cups.indexOf(cup)] != 0;
    }

    /** The note with all changes made: the value from the air column at both sets of heights, the ± along straight lines. */
    PlannedNumber predicted(Fingering fingering, PlannedNumber played, Map<Cup, Double> changes, double cents) {
        List<Because.Input> inputs = new ArrayList<>();
        inputs.add(Because.Input.of("as played", played));
        changes.forEach((cup, toMm) -> {
            if (moves(fingering, cup)) {
                inputs.add(Because.Input.of(
                        ask.keywork().nameOf(cup).display() + " to its height", alone(fingering, cup, toMm)));
            }
        });
        PlannedNumber straight = reasons.derive(
                "sound/predicted/" + fingering.id(),
                "as played + what the air column says all changes do together; about the sum of what each does alone",
                "cents",
                in -> java.util.Arrays.stream(in).sum(),
                inputs);
        double moved = ask.rules().value("sound.effect-times") * cents;
        double effect = Math.sqrt(Math.max(0, straight.u() * straight.u() - played.u() * played.u()))
                * steeper(moved, straight.value() - played.value());
        double u = Math.hypot(played.u(), effect);
        return new PlannedNumber(played.value() + moved, "cents", u, straight.because(), null, null, null);
    }

    /** A pad that comes down counts more the lower it stands, and so does the gauge's error at its new height. */
    private static double steeper(double moved, double straight) {
        return Math.abs(straight) < TOLD ? 1 : Math.clamp(Math.abs(moved / straight), 1, STEEPEST);
    }
}
