package hornwright.desk.jobfile;

import hornwright.bench.rules.Rounding;
import hornwright.bench.rules.Rule;
import hornwright.bench.rules.ShopRules;
import hornwright.desk.json.Bound;
import hornwright.desk.json.Fields;

/** The shop's own rules over those as they come; a rule that is not named stays typical. */
final class RulesJson {
    private RulesJson() {}

    static ShopRules read(Fields file) {
        return file.has("rules") ? file.object("rules", RulesJson::rules) : ShopRules.shipped();
    }

    private static ShopRules rules(Fields f) {
        ShopRules rules = ShopRules.shipped()
                .withRounding(f.choiceOr("rounding", Spoken.of(Rounding.values(), Rounding::word), Rounding.NEAREST))
                .withCurrency(f.textOr("currency", ShopRules.shipped().currency(), "EUR"));
        for (Rule rule : ShopRules.shipped().all()) {
            Double value = f.numberIfAny(rule.id(), Bound.ANY, String.valueOf(rule.value()));
            if (value != null && !(value >= rule.least() && value <= rule.most())) {
                f.fault(
                        rule.id(),
                        value + " must lie between " + rule.least() + " and " + rule.most(),
                        "\"" + rule.id() + "\": " + rule.value());
            } else if (value != null) {
                rules = rules.with(rule.id(), value);
            }
        }
        return rules;
    }
}
