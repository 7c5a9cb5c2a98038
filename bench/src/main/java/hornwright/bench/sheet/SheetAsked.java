package hornwright.bench.sheet;

import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Place;
import hornwright.bench.plan.Found;
import hornwright.bench.plan.PlanInputs;
import hornwright.bench.plan.measured.Measurements;
import hornwright.bench.plan.treatment.Findings;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.survey.AgreedUse;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What every sheet is made from.
 *
 * @param measured the readings that still count
 * @param found by place, the material the survey found there
 * @param use what the horn is for
 */
public record SheetAsked(
        Keywork keywork, Measurements measured, Map<String, String> found, ShopRules rules, AgreedUse use) {
    public SheetAsked {
        found = Map.copyOf(found);
    }

    public static SheetAsked of(PlanInputs inputs) {
        return new SheetAsked(inputs.keywork(), Measurements.of(inputs), found(inputs), inputs.rules(), inputs.use());
    }

    private static Map<String, String> found(PlanInputs inputs) {
        Findings findings = new Findings(inputs.keywork(), inputs.findings(), inputs.groupFindings());
        Map<String, String> materials = new HashMap<>();
        for (Place place : inputs.keywork().places()) {
            Found found = findings.found(place);
            if (found != null && found.material() != null) {
                materials.put(place.id(), found.material());
            }
        }
        return materials;
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
