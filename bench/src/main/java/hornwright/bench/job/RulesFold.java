package hornwright.bench.job;

import hornwright.bench.rules.ShopRules;
import java.util.Map;

/** How the edits of the shop's name and rules add up, beginning with the rules as they come. */
public record RulesFold() implements Folding<House> {
    @Override
    public House start() {
        return House.of("", ShopRules.shipped(), Map.of());
    }

    @Override
    public House with(House house, Posted posted) {
        ShopRules rules = house.rules();
        return switch (posted.edit()) {
            case RuleSet set ->
                house.with(set.value() == null ? rules.asShipped(set.rule()) : rules.with(set.rule(), set.value()));
            case RoundingChosen chosen -> house.with(rules.withRounding(chosen.rounding()));
            case CurrencyChosen chosen -> house.with(rules.withCurrency(chosen.currency()));
            case ShopNamed named -> house.called(named.name());
            case MaterialTested tested -> house.with(tested.id(), tested.test());
            default ->
                throw new IllegalStateException(
                        "'%s' does not change the rules".formatted(posted.edit().inWords()));
        };
    }
}
