package hornwright.bench.job;

/** A change to the shop's own rules. */
public sealed interface RulesEdit extends Edit
        permits RuleSet, RoundingChosen, CurrencyChosen, ShopNamed, MaterialTested, Undone {
    @Override
    default boolean belongsIn(StreamName stream) {
        return stream.equals(StreamName.RULES);
    }
}
