package hornwright.bench.sheet;

import hornwright.bench.horn.Keywork;
import hornwright.bench.plan.PlanInputs;
import hornwright.bench.plan.measured.Measurements;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.survey.AgreedUse;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import java.util.List;
import java.util.Optional;

/** What every sheet is made from: the horn, the readings that still count, the rules, and what the horn is for. */
public record SheetAsked(Keywork keywork, Measurements measured, ShopRules rules, AgreedUse use) {
    public static SheetAsked of(PlanInputs inputs) {
        return new SheetAsked(inputs.keywork(), Measurements.of(inputs), inputs.rules(), inputs.use());
    }

    /** The last reading of this at this point. */
    public Optional<Reading> last(ReadingKind kind, String of, String point) {
        return at(kind, of, point).stream().reduce((first, second) -> second);
    }

    /** All readings of this at this point that stand beside each other. */
    public List<Reading> at(ReadingKind kind, String of, String point) {
        return measured.of(kind, of).stream()
                .filter(reading -> reading.point().equals(point))
                .toList();
    }

    /** The word that was said of this at this point; empty when nobody has looked. */
    public String word(ReadingKind kind, String of, String point) {
        return last(kind, of, point)
                .map(reading -> reading.observed() instanceof Observed.Says says ? says.word() : "")
                .orElse("");
    }
}
