package hornwright.bench.job;

/** What prices are quoted in, as three letters. */
@Kind(word = "currency-chosen")
public record CurrencyChosen(String currency) implements RulesEdit {
    @Override
    public Fields fields() {
        return Fields.of("currency");
    }

    @Override
    public String inWords() {
        return "currency: " + currency;
    }
}
