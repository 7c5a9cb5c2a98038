package hornwright.bench.sound;

import hornwright.bench.horn.Fingering;
import hornwright.bench.plan.Because;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import hornwright.bench.survey.PlayTest;
import hornwright.bench.survey.PlayTest.Playing;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** The notes of one play test as numbers: repeats averaged, what all share told apart. */
final class PlayedNotes {
    /** The median of normal values spreads √(π/2) as wide as their mean. */
    private static final double MEDIAN_WIDER = Math.sqrt(Math.PI / 2);

    /** Whole cents typed twice alike are still no better known than this (bench judgement). */
    private static final double FINEST = 0.5;

    private final Map<String, PlannedNumber> heard = new LinkedHashMap<>();
    private final PlannedNumber common;
    private final Reasons reasons;

    PlayedNotes(SoundQuestion ask, PlayTest test, Reasons reasons) {
        this.reasons = reasons;
        double one = repeat(ask);
        Map<String, List<Double>> plays = new LinkedHashMap<>();
        for (Playing note : test.notes()) {
            plays.computeIfAbsent(note.fingering(), none -> new ArrayList<>()).add(note.cents());
        }
        for (Fingering fingering : ask.keywork().fingerings()) {
            List<Double> cents = plays.get(fingering.id());
            if (cents != null) {
                heard.put(fingering.id(), heard(test, fingering, cents, one));
            }
        }
        common = common(one);
    }

    /** One standard deviation of one playing: as this horn's tests repeat notes, else as the shop's rule has it. */
    private static double repeat(SoundQuestion ask) {
        OptionalDouble spread = Baseline.spread(ask.tests());
        return Math.max(FINEST, spread.orElse(ask.rules().value("sound.repeat_cents")));
    }

    private PlannedNumber heard(PlayTest test, Fingering fingering, List<Double> cents, double one) {
        double mean = cents.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
        String times = cents.size() == 1 ? "played once" : "mean of %d playings".formatted(cents.size());
        Because.Leaf leaf = new Because.FromReading(
                "sound/heard/" + fingering.id(),
                "%s, %s, A4 = %s Hz, mouthpiece: %s, reed: %s"
                        .formatted(
                                WrittenNote.shown(fingering),
                                times,
                                test.conditions().referenceHz(),
                                said(test.conditions().mouthpiece()),
                                said(test.conditions().reed())),
                test.id(),
                test.heardBy().word());
        return reasons.leaf(leaf, mean, "cents", one / Math.sqrt(cents.size()));
    }

    private static String said(String words) {
        return words.isBlank() ? "not said" : words;
    }

    private PlannedNumber common(double one) {
        List<Because.Input> inputs = new ArrayList<>();
        heard.forEach(
                (fingering, number) -> inputs.add(Because.Input.of(fingering.replaceFirst("^note\\.", ""), number)));
        PlannedNumber middle = reasons.derive(
                "sound/common",
                "the middle one of all notes: what they share is mouthpiece on its cork, reed and warm air, not heights",
                "cents",
                HeightAdvice::median,
                inputs);
        double u = MEDIAN_WIDER * one / Math.sqrt(heard.size());
        return new PlannedNumber(middle.value(), "cents", u, middle.because(), null, null, null);
    }

    PlannedNumber common() {
        return common;
    }

    /** By fingering, as heard, common part and all. */
    Map<String, PlannedNumber> heard() {
        return heard;
    }

    PlannedNumber relative(Fingering fingering) {
        PlannedNumber note = java.util.Objects.requireNonNull(heard.get(fingering.id()));
        // what the note itself adds to the common part is a thirtieth; the common part is taken as it is
        PlannedNumber share = new PlannedNumber(common.value(), "cents", 0, common.because(), null, null, null);
        return reasons.derive(
                "sound/played/" + fingering.id(),
                "as heard - what all notes share",
                "cents",
                in -> in[0] - in[1],
                Because.Input.of("as heard", note),
                Because.Input.of("all notes share", share));
    }
}
