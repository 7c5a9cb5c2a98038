package hornwright.bench.job;

import hornwright.bench.rules.ShopRules;

/**
 * The shop itself.
 *
 * @param name empty while it has none
 */
public record House(String name, ShopRules rules) {
    House with(ShopRules changed) {
        return new House(name, changed);
    }
}
