package hornwright.bench.job;

import hornwright.bench.material.BenchTest;
import hornwright.bench.material.Materials;
import hornwright.bench.rules.ShopRules;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The shop itself.
 *
 * @param name empty while it has none
 * @param rules as they come or as the shop has set them
 * @param tests of materials at its own bench, by id
 * @param measuredRules the rules with what those tests gave laid over them: what a plan works by
 */
public record House(String name, ShopRules rules, Map<String, BenchTest> tests, ShopRules measuredRules) {
    public House {
        tests = Collections.unmodifiableMap(new LinkedHashMap<>(tests));
    }

    static House of(String name, ShopRules rules, Map<String, BenchTest> tests) {
        return new House(
                name, rules, tests, Materials.of(rules).withAll(tests.values()).measuredRules());
    }

    House with(ShopRules changed) {
        return of(name, changed, tests);
    }

    House called(String other) {
        return new House(other, rules, tests, measuredRules);
    }

    House with(String id, BenchTest test) {
        Map<String, BenchTest> more = new LinkedHashMap<>(tests);
        more.put(id, test);
        return of(name, rules, more);
    }

    /** The table of materials of this shop. */
    public Materials materials() {
        return Materials.of(measuredRules);
    }
}
