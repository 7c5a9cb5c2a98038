package hornwright.bench.plan.feel;

import hornwright.bench.horn.Keywork;
import hornwright.bench.plan.PlanInputs;
import hornwright.bench.plan.measured.Measurements;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.stock.Stock;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import java.util.List;

/**
 * Everything the feel of an action depends on; equal questions have equal answers.
 *
 * @param weights touch weights that still count
 */
public record FeelQuestion(Keywork keywork, List<Reading> weights, Stock stock, ShopRules rules) {
    public FeelQuestion {
        weights = List.copyOf(weights);
    }

    public static FeelQuestion of(PlanInputs inputs) {
        Measurements measured = Measurements.of(inputs);
        return new FeelQuestion(
                inputs.keywork(), measured.all(ReadingKind.TOUCH_WEIGHT).toList(), inputs.stock(), inputs.rules());
    }
}
