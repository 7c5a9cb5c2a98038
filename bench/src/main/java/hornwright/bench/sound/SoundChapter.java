package hornwright.bench.sound;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Fingering;
import hornwright.bench.horn.Keywork;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import hornwright.bench.sound.HeightOffer.Change;
import hornwright.bench.sound.SoundAnswer.ChangeLine;
import hornwright.bench.sound.SoundAnswer.LeftLine;
import hornwright.bench.sound.SoundAnswer.Moved;
import hornwright.bench.sound.SoundAnswer.NoteLine;
import hornwright.bench.survey.Decision;
import hornwright.bench.survey.PlayTest;
import hornwright.engines.air.Air;
import hornwright.engines.air.AirModel;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Answers how a horn plays and what would bring it nearer. Nothing of it enters the plan by itself: a height counts once a
 * person has accepted it, and what is offered starts from the heights the plan wants.
 */
public final class SoundChapter {
    /** Warm and damp air of a played horn, for all horns alike; what it is off by is part of what all notes share. */
    public static final Air AIR = AirModel.CHAIGNE_KERGOMARD.at(26.85);

    private static final int STRONGEST = 3;

    private final SoundQuestion ask;
    private final Keywork keywork;
    private final PlayTest test;
    private final Reasons reasons;
    private final Openings openings;
    private final PlayedNotes played;
    private final List<Fingering> heard;

    private SoundChapter(SoundQuestion ask, PlayTest test) {
        this.ask = ask;
        this.test = test;
        keywork = ask.keywork();
        reasons = new Reasons();
        openings = new Openings(ask, reasons);
        played = new PlayedNotes(ask, test, reasons);
        heard = keywork.fingerings().stream()
                .filter(fingering -> played.heard().containsKey(fingering.id()))
                .toList();
    }

    /** A few tenths of a second: the air column is reckoned some ten times. */
    public static SoundAnswer answer(SoundQuestion ask) {
        return ask.basis().map(test -> new SoundChapter(ask, test).answer()).orElseGet(() -> unplayed(ask));
    }

    private static SoundAnswer unplayed(SoundQuestion ask) {
        Reasons reasons = new Reasons();
        SoundAnswer.Known known = new Openings(ask, reasons).known();
        return new SoundAnswer(null, null, List.of(), 0, List.of(), List.of(), List.of(), null, known, reasons.table());
    }

    private SoundAnswer answer() {
        BoreFit fit =
                new FittedNumbers(ask, reasons).fit(AIR, openings.shape(), openings.doubts(), test, played.heard());
        HornShape as = fit == null ? openings.shape() : openings.shape().fitted(fit);
        double[] then = HeightEffects.frequencies(keywork, AIR, as);
        Map<Cup, Double> restored = openings.restored();
        HornShape start = ChangeEffects.with(as, restored);
        HeightEffects effects = HeightEffects.of(keywork, AIR, start);
        Map<String, Double> settled = moved(then, effects.frequencies());
        HeightOffer offer = offer(start, settled);
        Map<Cup, Double> offers = new LinkedHashMap<>();
        offer.changes().forEach(change -> offers.put(keywork.cups().get(change.cup()), change.toFrontMm()));
        Map<String, Double> shift = offers.isEmpty()
                ? settled
                : moved(then, HeightEffects.frequencies(keywork, AIR, ChangeEffects.with(start, offers)));
        EffectNumbers numbers = new EffectNumbers(ask, openings, effects, reasons);
        Heights heights = new Heights(heights(restored, Map.of()), heights(restored, offers), settled, shift);
        List<NoteLine> notes =
                heard.stream().map(note -> line(note, numbers, heights)).toList();
        return new SoundAnswer(
                test,
                played.common(),
                notes,
                restored.size(),
                accepted(as, then, numbers),
                lines(offer.changes(), numbers, openings::start),
                left(offer, notes),
                fit == null ? null : new FittedNumbers(ask, reasons).numbers(fit, played.common()),
                openings.known(),
                reasons.table());
    }

    /** Heights of the cups that are moved, and by how much notes move from where they were played. */
    private record Heights(
            Map<Cup, PlannedNumber> planned,
            Map<Cup, PlannedNumber> offered,
            Map<String, Double> settled,
            Map<String, Double> shift) {}

    /** Where cups stand then that do not stand as played; those that are offered stand where they are offered. */
    private Map<Cup, PlannedNumber> heights(Map<Cup, Double> restored, Map<Cup, Double> offers) {
        Map<Cup, PlannedNumber> heights = new LinkedHashMap<>();
        restored.keySet().forEach(cup -> heights.put(cup, openings.start(cup)));
        offers.forEach((cup, mm) -> heights.put(cup, openings.set(cup, mm)));
        return heights;
    }

    private NoteLine line(Fingering note, EffectNumbers numbers, Heights heights) {
        PlannedNumber now = played.relative(note);
        boolean restored = heights.planned().keySet().stream().anyMatch(cup -> numbers.moves(note, cup));
        boolean offered = heights.offered().entrySet().stream()
                .anyMatch(set -> numbers.moves(note, set.getKey())
                        && !set.getValue().equals(heights.planned().get(set.getKey())));
        double settled = heights.settled().getOrDefault(note.id(), 0.0);
        double shift = heights.shift().getOrDefault(note.id(), 0.0);
        return new NoteLine(
                note,
                now,
                restored ? numbers.predicted("planned", note, now, heights.planned(), settled) : null,
                offered ? numbers.predicted("predicted", note, now, heights.offered(), shift) : null,
                numbers.strongest(note, STRONGEST));
    }

    /** Cents every note moves from one set of frequencies to another. */
    private Map<String, Double> moved(double[] from, double[] to) {
        Map<String, Double> shift = new HashMap<>();
        for (int i = 0; i < to.length; i++) {
            double cents = HeightEffects.cents(from[i], to[i]);
            shift.put(keywork.fingerings().list().get(i).id(), Double.isFinite(cents) ? cents : 0);
        }
        return shift;
    }

    private HeightOffer offer(HornShape start, Map<String, Double> settled) {
        List<NoteTuning> notes = heard.stream()
                .map(note -> {
                    PlannedNumber cents =
                            java.util.Objects.requireNonNull(played.heard().get(note.id()));
                    return new NoteTuning(note.id(), cents.value() + settled.getOrDefault(note.id(), 0.0), cents.u());
                })
                .toList();
        HeightAdvice.Wish wish = new HeightAdvice.Wish(ask.chosen(), FootRoom.of(ask));
        return HeightAdvice.offer(
                keywork, AIR, ask.rules(), start, notes, played.common().value(), wish);
    }

    /** What a person accepted, against the factory's heights. */
    private List<ChangeLine> accepted(HornShape as, double[] then, EffectNumbers numbers) {
        Map<String, Decision.Height> accepted = openings.accepted();
        if (accepted.isEmpty()) {
            return List.of();
        }
        HornShape factory = ChangeEffects.with(as, openings.factory());
        double[] frequencies = HeightEffects.frequencies(keywork, AIR, factory);
        Map<String, Double> settled = moved(then, frequencies);
        double[] cents = heard.stream()
                .mapToDouble(note -> played.relative(note).value() + settled.getOrDefault(note.id(), 0.0))
                .toArray();
        Map<Cup, Double> to = new LinkedHashMap<>();
        accepted.forEach((cup, height) -> to.put(keywork.cups().get(cup), height.frontMm()));
        double band = ask.rules().value(HeightAdvice.BAND);
        List<Change> changes = new ChangeEffects(keywork, AIR, factory, heard, cents, frequencies).of(to, band);
        return lines(changes, numbers, openings::factory);
    }

    private List<ChangeLine> lines(
            List<Change> changes, EffectNumbers numbers, java.util.function.Function<Cup, PlannedNumber> from) {
        return changes.stream()
                .map(change -> line(change, numbers, from.apply(keywork.cups().get(change.cup()))))
                .toList();
    }

    private ChangeLine line(Change change, EffectNumbers numbers, PlannedNumber from) {
        Cup cup = keywork.cups().get(change.cup());
        Decision.Height settled = openings.accepted().get(cup.id());
        String why = settled != null && settled.frontMm() == change.toFrontMm() ? settled.why() : "";
        List<Moved> moved = change.effects().stream()
                .map(effect -> {
                    Fingering note = keywork.fingerings().get(effect.fingering());
                    double cents = effect.alone() - effect.before();
                    PlannedNumber alone = numbers.alone(note, cup, from, change.toFrontMm(), cents);
                    return new Moved(note, alone, effect.before(), effect.after(), effect.harm());
                })
                .toList();
        return new ChangeLine(cup, from, openings.set(cup, change.toFrontMm()), why, moved);
    }

    private List<LeftLine> left(HeightOffer offer, List<NoteLine> notes) {
        List<LeftLine> left = new ArrayList<>();
        for (HeightOffer.Left one : offer.left()) {
            notes.stream()
                    .filter(note -> note.fingering().id().equals(one.fingering()))
                    .forEach(note -> left.add(new LeftLine(note.fingering(), note.then(), one.ladder())));
        }
        return left;
    }
}
