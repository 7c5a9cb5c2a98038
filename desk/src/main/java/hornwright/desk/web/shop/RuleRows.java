package hornwright.desk.web.shop;

import hornwright.bench.rules.Rule;
import hornwright.bench.rules.ShopRules;
import hornwright.desk.web.view.OnBench;
import hornwright.desk.web.view.Written;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Writes the rules by the first word of their ids. */
public final class RuleRows {
    private RuleRows() {}

    /** @param faulty the rule whose typed text was refused, with the text and why; null when none was */
    public static List<RulesPage.Group> of(ShopRules rules, @Nullable String faulty, String typed, String fault) {
        Map<String, List<Rule>> byWord = rules.all().stream()
                .collect(Collectors.groupingBy(RuleRows::word, LinkedHashMap::new, Collectors.toList()));
        return byWord.entrySet().stream()
                .map(entry -> new RulesPage.Group(
                        OnBench.capital(entry.getKey().replace('-', ' ')),
                        entry.getValue().stream()
                                .map(rule -> rule.id().equals(faulty)
                                        ? line(rule, typed, fault)
                                        : line(rule, Written.exact(rule.value()), ""))
                                .toList()))
                .toList();
    }

    private static String word(Rule rule) {
        int end = rule.id().indexOf('.');
        return end < 0 ? rule.id() : rule.id().substring(0, end);
    }

    private static RulesPage.Line line(Rule rule, String value, String fault) {
        return new RulesPage.Line(
                rule.id(),
                OnBench.capital(rule.says()),
                value,
                rule.unit(),
                rule.label(),
                "%s to %s".formatted(Written.exact(rule.least()), Written.exact(rule.most())),
                !rule.asShipped(),
                fault,
                UUID.randomUUID().toString());
    }
}
