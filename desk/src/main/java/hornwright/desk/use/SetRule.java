package hornwright.desk.use;

import hornwright.bench.job.RuleSet;
import hornwright.bench.job.StreamName;
import hornwright.bench.rules.Rule;
import hornwright.bench.rules.ShopRules;
import hornwright.desk.json.BadInput;

/** Sets the shop's own value for a rule, or puts it back to what it came with. */
public record SetRule(Shop shop) {
    public Saved set(Form form, String rule, double value) {
        Rule now = known(rule);
        if (!(value >= now.least() && value <= now.most())) {
            throw new BadInput(
                    "/value",
                    "%s must lie between %s and %s %s, it is %s"
                            .formatted(rule, now.least(), now.most(), now.unit(), value),
                    Double.toString(now.value()));
        }
        return shop.save(StreamName.RULES, form, new RuleSet(rule, value));
    }

    public Saved asShipped(Form form, String rule) {
        known(rule);
        return shop.save(StreamName.RULES, form, new RuleSet(rule, null));
    }

    private Rule known(String rule) {
        ShopRules rules = shop.house().state().rules();
        return rules.find(rule)
                .orElseThrow(() -> new BadInput(
                        "/rule",
                        "there is no rule \"" + rule + "\"",
                        "\"" + rules.all().iterator().next().id() + "\""));
    }
}
