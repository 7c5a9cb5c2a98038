package hornwright.bench.job;

import hornwright.bench.rules.ShopRules;

/** How the edits of the shop's rules add up, beginning with the rules as they come. */
public record RulesFold() implements Folding<ShopRules> {
    @Override
    public ShopRules start() {
        return ShopRules.shipped();
    }

    @Override
    public ShopRules with(ShopRules rules, Posted posted) {
        return switch (posted.edit()) {
            case RuleSet set -> set.value() == null ? rules.asShipped(set.rule()) : rules.with(set.rule(), set.value());
            case RoundingChosen chosen -> rules.withRounding(chosen.rounding());
            case CurrencyChosen chosen -> rules.withCurrency(chosen.currency());
            default ->
                throw new IllegalStateException(
                        "'%s' does not change the rules".formatted(posted.edit().inWords()));
        };
    }
}
