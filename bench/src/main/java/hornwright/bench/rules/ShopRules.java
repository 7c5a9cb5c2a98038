package hornwright.bench.rules;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;

/**
 * All rules of one shop, by id, in the order they are shown.
 *
 * @param rounding which way pad diameters go to the stocked step
 * @param currency three letters, as prices are quoted
 */
public record ShopRules(Map<String, Rule> byId, Rounding rounding, String currency) {
    private static final ShopRules SHIPPED = new ShopRules(ShippedRules.read(), Rounding.NEAREST, "EUR");

    public ShopRules {
        byId = Collections.unmodifiableMap(new LinkedHashMap<>(byId));
    }

    /** The rules as they come, every one typical. */
    public static ShopRules shipped() {
        return SHIPPED;
    }

    public Collection<Rule> all() {
        return byId.values();
    }

    public Optional<Rule> find(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    public Rule get(String id) {
        return find(id).orElseThrow(() -> new NoSuchElementException("no shop rule is called " + id));
    }

    public double value(String id) {
        return get(id).value();
    }

    /** The same rules with one value set by the shop; refused outside the rule's range. */
    public ShopRules with(String id, double value) {
        Map<String, Rule> changed = new LinkedHashMap<>(byId);
        changed.put(id, get(id).with(value));
        return new ShopRules(changed, rounding, currency);
    }

    /** The same rules with one value as tests at the shop's own bench gave it, which outranks what it came with or was set to. */
    public ShopRules measured(String id, double value, double u, String how) {
        Map<String, Rule> changed = new LinkedHashMap<>(byId);
        changed.put(id, get(id).measured(value, u, how));
        return new ShopRules(changed, rounding, currency);
    }

    /** The same rules with one back to the value it came with. */
    public ShopRules asShipped(String id) {
        Map<String, Rule> changed = new LinkedHashMap<>(byId);
        changed.put(id, SHIPPED.get(id));
        return new ShopRules(changed, rounding, currency);
    }

    public ShopRules withRounding(Rounding chosen) {
        return new ShopRules(byId, chosen, currency);
    }

    public ShopRules withCurrency(String chosen) {
        return new ShopRules(byId, rounding, chosen);
    }
}
