package hornwright.bench.steps;

import hornwright.bench.horn.Keywork;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.Treatment;
import java.util.List;
import java.util.Map;

/**
 * What the steps of one horn follow from.
 *
 * @param treatments what happens at a place, by its id; a place nobody has planned counts as renewed
 * @param readings those that still count
 * @param rules up to what a reading asks for nothing
 */
public record StepsAsked(Keywork keywork, Map<String, Treatment> treatments, List<Reading> readings, ShopRules rules) {
    public StepsAsked {
        treatments = Map.copyOf(treatments);
        readings = List.copyOf(readings);
    }

    /** A horn nobody has looked at. */
    public static StepsAsked of(Keywork keywork) {
        return new StepsAsked(keywork, Map.of(), List.of(), ShopRules.shipped());
    }
}
