package hornwright.bench.job;

import org.jspecify.annotations.Nullable;

/**
 * The shop's own value for one of its rules.
 *
 * @param value null puts the rule back to what it came with
 */
@Kind(word = "rule-set")
public record RuleSet(String rule, @Nullable Double value) implements RulesEdit {
    @Override
    public Fields fields() {
        return Fields.of("rule." + rule);
    }

    @Override
    public String inWords() {
        return rule + (value == null ? " as it came" : " = " + value);
    }
}
