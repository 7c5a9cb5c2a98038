package hornwright.bench.sound;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Fingering;
import hornwright.bench.plan.Because;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What heights do to notes, each with the reasons it stands on; slopes are those at the heights before anything is offered. */
final class EffectNumbers {
    /** Less is not told, cents. */
    static final double TOLD = 0.5;

    private static final double STEEPEST = 2;
    /** Cents for each mm. */
    private static final double LEAST = 0.1;

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
                        Because.Input.of("height it is reckoned at", openings.start(cup))));
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

    /** What one changed cup does to a note, about, the others staying where they are before anything is offered. */
    PlannedNumber alone(Fingering fingering, Cup cup, PlannedNumber from, double toMm, double cents) {
        double slope = effects.perMm()[fingerings.indexOf(fingering)][cups.indexOf(cup)];
        double straight = slope * (toMm - from.value());
        double bend = straight == 0 ? 1 : cents / straight;
        return reasons.derive(
                ask.offered("sound/effect/%s/%s".formatted(fingering.id(), cup.id())),
                "about: cents for each mm x (height aimed at - height before) x what the air column says over that straight line",
                "cents",
                in -> in[0] * (in[1] - in[2]) * in[3],
                Because.Input.of("cents for each mm", perMm(fingering, cup)),
                Because.Input.of("height aimed at", openings.set(cup, toMm)),
                Because.Input.of("height before", from),
                Because.Input.of("air column over straight line", reasons.leaf(bent(fingering, cup), bend, "", 0)));
    }

    private Because.Leaf bent(Fingering fingering, Cup cup) {
        return new Because.BenchJudgement(
                ask.offered("sound/bend/%s/%s".formatted(fingering.id(), cup.id())),
                "a pad does less the higher it stands; reckoned by the air column at both heights");
    }

    /** From where the cup stood when the horn was played, along the straight line. */
    private PlannedNumber since(Fingering fingering, Cup cup, PlannedNumber to) {
        return reasons.derive(
                ask.offered("sound/since/%s/%s/%s".formatted(fingering.id(), cup.id(), Math.round(100 * to.value()))),
                "about: cents for each mm x (height then - height as played)",
                "cents",
                in -> in[0] * (in[1] - in[2]),
                Because.Input.of("cents for each mm", perMm(fingering, cup)),
                Because.Input.of("height then", to),
                Because.Input.of("height as played", openings.from(cup)));
    }

    /** Whether a millimetre of this cup can be told in this note at all. */
    boolean moves(Fingering fingering, Cup cup) {
        return Math.abs(effects.perMm()[fingerings.indexOf(fingering)][cups.indexOf(cup)]) > LEAST;
    }

    /**
     * The note with cups at other heights than it was played with: the value from the air column at both sets of heights, the ±
     * along straight lines.
     *
     * @param when a word for the id: with the heights of the plan, or with what is offered too
     * @param heights of every cup then
     * @param cents the air column says the note moves
     */
    PlannedNumber predicted(
            String when, Fingering fingering, PlannedNumber played, Map<Cup, PlannedNumber> heights, double cents) {
        List<Because.Input> inputs = new ArrayList<>();
        inputs.add(Because.Input.of("as played", played));
        heights.forEach((cup, to) -> {
            if (moves(fingering, cup)) {
                inputs.add(Because.Input.of(
                        ask.keywork().nameOf(cup).display() + " to its height", since(fingering, cup, to)));
            }
        });
        PlannedNumber straight = reasons.derive(
                ask.offered("sound/%s/%s".formatted(when, fingering.id())),
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
