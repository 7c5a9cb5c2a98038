package hornwright.bench.job;

/** Whose horn it is and what is wrong with it, put right. */
@Kind(word = "arrival-amended")
public record ArrivalAmended(Arrival arrival) implements JobEdit {
    @Override
    public Fields fields() {
        return Fields.of("arrival");
    }

    @Override
    public String inWords() {
        return "owner and complaint amended";
    }
}
