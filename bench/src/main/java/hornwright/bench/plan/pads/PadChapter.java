package hornwright.bench.plan.pads;

import hornwright.bench.plan.Advice;
import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.PadChoice;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import hornwright.bench.plan.Warning;
import hornwright.bench.plan.measured.CupGeometry;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Answers for the pad of one cup, from what is known of it. */
public final class PadChapter {
    private final PadQuestion ask;
    private final Reasons reasons = new Reasons();
    private final Map<NumberName, PlannedNumber> numbers = new LinkedHashMap<>();
    private final List<Advice> advice = new ArrayList<>();
    private final List<Warning> warnings = new ArrayList<>();

    private PadChapter(PadQuestion ask) {
        this.ask = ask;
    }

    public static PadAnswer answer(PadQuestion ask) {
        return new PadChapter(ask).answer();
    }

    private PadAnswer answer() {
        CupGeometry geometry = CupGeometry.of(ask.keywork(), ask.cup(), ask.holes(), ask.arms(), ask.rules(), reasons);
        Optional<PlayEffect> play = PlayEffect.of(ask, geometry, reasons);
        play.ifPresent(this::put);
        new PadDiameter(ask, geometry, reasons).put(numbers, warnings);
        List<PadChoice> choices = List.of();
        if (geometry.possible()) {
            new LandingGaps(ask, geometry, reasons).put(numbers);
            PadRoom room = PadRoom.of(ask, geometry, reasons);
            PadWindow window = new ThicknessChoice(ask, room, numbers.get(NumberName.DIAMETER), reasons).find();
            room.put(numbers);
            window.put(numbers);
            choices = window.choices();
            advice.addAll(new PadAdvice(ask, room, window).list());
        } else {
            warnings.add(new Warning(
                    Warning.Sort.PAD_FIT,
                    "%s: the hinge would lie inside the hole; measure hole and axis to centre again"
                            .formatted(ask.display()),
                    List.of(ask.cup().id())));
        }
        RimAdvice.of(ask, reasons, numbers).ifPresent(advice::add);
        return new PadAnswer(
                ask.place(),
                numbers,
                choices,
                advice,
                warnings,
                play.filter(PlayEffect::gates).map(PlayEffect::why).orElse(null),
                reasons.table());
    }

    private void put(PlayEffect play) {
        numbers.put(NumberName.PLAY_SHIFT, play.shift());
        numbers.put(NumberName.PLAY_TILT, play.tilt());
        if (play.gates()) {
            advice.add(play.advice());
            warnings.add(new Warning(
                    Warning.Sort.KEY_FIT, play.why(), List.of(ask.cup().key(), ask.place())));
        }
    }
}
