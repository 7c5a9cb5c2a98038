package hornwright.bench.sound;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Fingering;
import hornwright.bench.horn.Keywork;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
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
 * person has accepted it.
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
        return new SoundAnswer(null, null, List.of(), List.of(), List.of(), List.of(), null, known, reasons.table());
    }

    private SoundAnswer answer() {
        BoreFit fit = new FittedNumbers(ask, reasons).fit(AIR, openings.shape(), test, played.heard());
        HornShape as = fit == null ? openings.shape() : openings.shape().fitted(fit);
        HeightEffects effects = HeightEffects.of(keywork, AIR, as);
        Map<Cup, Double> accepted = new LinkedHashMap<>();
        openings.accepted()
                .values()
                .forEach(height -> accepted.put(keywork.cups().get(height.cup()), height.frontMm()));
        Map<String, Double> settled = moved(as, effects, accepted);
        HeightOffer offer = offer(with(as, accepted), settled);
        Map<Cup, Double> all = new LinkedHashMap<>(accepted);
        offer.changes().forEach(change -> all.put(keywork.cups().get(change.cup()), change.toFrontMm()));
        Map<String, Double> shift = all.equals(accepted) ? settled : moved(as, effects, all);
        EffectNumbers numbers = new EffectNumbers(ask, openings, effects, reasons);
        List<NoteLine> notes =
                heard.stream().map(note -> line(note, numbers, all, shift)).toList();
        return new SoundAnswer(
                test,
                played.common(),
                notes,
                accepted(accepted, numbers, notes),
                offered(offer, numbers, notes),
                left(offer, notes),
                fit == null ? null : new FittedNumbers(ask, reasons).numbers(fit, played.common()),
                openings.known(),
                reasons.table());
    }

    private NoteLine line(Fingering note, EffectNumbers numbers, Map<Cup, Double> all, Map<String, Double> shift) {
        PlannedNumber now = played.relative(note);
        boolean moves = all.keySet().stream().anyMatch(cup -> numbers.moves(note, cup));
        double cents = shift.getOrDefault(note.id(), 0.0);
        return new NoteLine(
                note, now, moves ? numbers.predicted(note, now, all, cents) : null, numbers.strongest(note, STRONGEST));
    }

    /** Cents every note moves when these cups go to these heights, by the air column itself. */
    private Map<String, Double> moved(HornShape as, HeightEffects before, Map<Cup, Double> changes) {
        Map<String, Double> shift = new HashMap<>();
        if (!changes.isEmpty()) {
            double[] after = HeightEffects.frequencies(keywork, AIR, with(as, changes));
            for (int i = 0; i < after.length; i++) {
                String id = keywork.fingerings().list().get(i).id();
                double cents = HeightEffects.cents(before.frequencies()[i], after[i]);
                shift.put(id, Double.isFinite(cents) ? cents : 0);
            }
        }
        return shift;
    }

    private static HornShape with(HornShape as, Map<Cup, Double> changes) {
        Map<String, Double> heights = new HashMap<>(as.frontMm());
        changes.forEach((cup, mm) -> heights.put(cup.id(), mm));
        return as.withHeights(heights);
    }

    private HeightOffer offer(HornShape as, Map<String, Double> settled) {
        List<NoteTuning> notes = heard.stream()
                .map(note -> {
                    PlannedNumber cents =
                            java.util.Objects.requireNonNull(played.heard().get(note.id()));
                    return new NoteTuning(note.id(), cents.value() + settled.getOrDefault(note.id(), 0.0), cents.u());
                })
                .toList();
        return HeightAdvice.offer(
                keywork, AIR, ask.rules(), as, notes, played.common().value());
    }

    private List<ChangeLine> accepted(Map<Cup, Double> changes, EffectNumbers numbers, List<NoteLine> notes) {
        Map<String, Decision.Height> why = openings.accepted();
        List<ChangeLine> lines = new ArrayList<>();
        changes.forEach((cup, mm) -> lines.add(change(
                cup, mm, java.util.Objects.requireNonNull(why.get(cup.id())).why(), numbers, notes)));
        return lines;
    }

    private List<ChangeLine> offered(HeightOffer offer, EffectNumbers numbers, List<NoteLine> notes) {
        return offer.changes().stream()
                .map(change -> change(keywork.cups().get(change.cup()), change.toFrontMm(), "", numbers, notes))
                .toList();
    }

    private ChangeLine change(Cup cup, double mm, String why, EffectNumbers numbers, List<NoteLine> notes) {
        double band = ask.rules().value(HeightAdvice.BAND);
        List<Moved> moved = new ArrayList<>();
        for (NoteLine note : notes) {
            if (numbers.moves(note.fingering(), cup)) {
                PlannedNumber cents = numbers.alone(note.fingering(), cup, mm);
                boolean out = Math.abs(note.played().value()) <= band
                        && Math.abs(note.then().value()) > band;
                if (Math.abs(cents.value()) >= EffectNumbers.TOLD || out) {
                    moved.add(new Moved(note.fingering(), cents, out));
                }
            }
        }
        return new ChangeLine(cup, openings.from(cup), openings.set(cup, mm), why, moved);
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
