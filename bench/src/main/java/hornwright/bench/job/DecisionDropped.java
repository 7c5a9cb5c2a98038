package hornwright.bench.job;

/** A decision taken back: what the plan proposes holds again. */
@Kind(word = "decision-dropped")
public record DecisionDropped(String about) implements JobEdit {
    @Override
    public Fields fields() {
        return Fields.of("decision." + about);
    }

    @Override
    public String inWords() {
        return "decision about %s taken back".formatted(about);
    }
}
