package hornwright.bench.plan;

import hornwright.bench.rules.Rule;
import hornwright.bench.rules.ShopRules;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Makes the numbers of one chapter and keeps their becauses. Uncertainties travel to first order, inputs taken as
 * independent (JCGM 100:2008, Guide to the expression of uncertainty in measurement, 5.1.2); so a rule names the numbers
 * it rests on as far down as they part ways.
 */
public final class Reasons {
    /** What a rule reckons from its inputs, in the units they carry. */
    @FunctionalInterface
    public interface Formula {
        double of(double[] inputs);
    }

    private final Map<String, Because> table = new LinkedHashMap<>();

    /** A number that rests on nothing further down. */
    public PlannedNumber leaf(Because.Leaf leaf, double value, String unit, double u) {
        table.putIfAbsent(leaf.id(), leaf);
        return new PlannedNumber(value, unit, u, leaf.id(), null, null, null);
    }

    /** A rule of the shop as a number. */
    public PlannedNumber rule(ShopRules rules, String id) {
        Rule rule = rules.get(id);
        Because.Leaf leaf = new Because.FromRule("rule " + id, rule.says(), rule.id(), rule.mark(), rule.asShipped());
        return leaf(leaf, rule.value(), rule.unit(), rule.u());
    }

    /** A number reckoned from others. */
    public PlannedNumber derive(String id, String rule, String unit, Formula formula, Because.Input... inputs) {
        return derive(id, rule, unit, formula, List.of(inputs));
    }

    public PlannedNumber derive(String id, String rule, String unit, Formula formula, List<Because.Input> inputs) {
        table.put(id, new Because.Derived(id, rule, inputs));
        double[] values = inputs.stream().mapToDouble(Because.Input::value).toArray();
        double variance = 0;
        for (int i = 0; i < values.length; i++) {
            double u = inputs.get(i).u();
            if (u > 0) {
                double share = slope(formula, values, i, u) * u;
                variance += share * share;
            }
        }
        return new PlannedNumber(formula.of(values), unit, Math.sqrt(variance), id, null, null, null);
    }

    public Becauses table() {
        return new Becauses(table);
    }

    /** Central difference over a tenth of the uncertainty: flat enough for a slope, wide enough for doubles. */
    private static double slope(Formula formula, double[] values, int i, double u) {
        double step = 0.1 * u;
        double[] moved = values.clone();
        moved[i] = values[i] + step;
        double above = formula.of(moved);
        moved[i] = values[i] - step;
        return (above - formula.of(moved)) / (2 * step);
    }
}
