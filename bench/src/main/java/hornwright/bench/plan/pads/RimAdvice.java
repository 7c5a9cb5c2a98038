package hornwright.bench.plan.pads;

import hornwright.bench.care.Hazard;
import hornwright.bench.horn.RimKind;
import hornwright.bench.plan.Advice;
import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import hornwright.bench.plan.measured.ReadNumbers;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.Reading;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What the worst gap under a flat disc asks for: nothing, floating, or levelling before any pad. */
final class RimAdvice {
    private RimAdvice() {}

    static Optional<Advice> of(PadQuestion ask, Reasons reasons, Map<NumberName, PlannedNumber> numbers) {
        Reading last = ask.rimGaps().isEmpty() ? null : ask.rimGaps().getLast();
        if (last == null || !(last.observed() instanceof Observed.RimGap rim)) {
            return Optional.empty();
        }
        String clock = String.format(Locale.ROOT, "worst gap at %s o'clock", rim.clock());
        PlannedNumber gap = new ReadNumbers(ask.rules(), reasons).part(last, clock, rim.gapMm(), rim.u());
        numbers.put(NumberName.RIM_GAP, gap);
        if (gap.value() <= ask.rules().value("rim.accept_mm")) {
            return Optional.empty();
        }
        return Optional.of(gap.value() < ask.rules().value("rim.act_mm") ? floated(ask, rim) : levelled(ask, rim));
    }

    /** A small gap: the adhesive takes it up, and nothing is taken from the horn. */
    private static Advice floated(PadQuestion ask, Observed.RimGap rim) {
        return Advice.of(String.format(
                Locale.ROOT,
                "%s hole: %.2f mm at %s o'clock. Float the pad over it; level only if it will not seal.",
                ask.display(),
                rim.gapMm(),
                rim.clock()));
    }

    private static Advice levelled(PadQuestion ask, Observed.RimGap rim) {
        boolean rolled = ask.hole().rim() == RimKind.ROLLED;
        String words = String.format(
                Locale.ROOT,
                "Level the %s hole first: %.2f mm at %s o'clock. Lift it from inside; a softer pad over it is a"
                        + " compromise with a price.",
                ask.display(),
                rim.gapMm(),
                rim.clock());
        return new Advice(
                words,
                List.of(rolled ? Hazard.ROLLED_RIM : Hazard.LEVELLING),
                List.of("level." + ask.cup().hole()));
    }
}
