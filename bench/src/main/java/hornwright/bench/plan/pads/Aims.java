package hornwright.bench.plan.pads;

import hornwright.bench.horn.Cup;
import hornwright.bench.plan.Because;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Reasons;
import hornwright.bench.rules.Rule;
import java.util.function.ToDoubleFunction;

/** What is aimed at where the maker did one thing and the shop may do another. */
final class Aims {
    private Aims() {}

    /**
     * The shop's own figure once it has set one, else the maker's by pattern with the uncertainty of the rule. A rule left
     * as shipped says less than the pattern does.
     */
    static PlannedNumber patternUnlessSet(
            PadQuestion ask, Reasons reasons, String what, String ruleId, ToDoubleFunction<Cup> pattern) {
        Rule rule = ask.rules().get(ruleId);
        if (!rule.asShipped()) {
            return reasons.rule(ask.rules(), ruleId);
        }
        String name = what + " " + ask.cup().hole();
        Because.Leaf leaf = new Because.FromPattern(
                "pattern " + name,
                name + " in the pattern " + ask.keywork().id(),
                ask.keywork().id());
        return reasons.leaf(leaf, pattern.applyAsDouble(ask.cup()), "mm", rule.u());
    }
}
