package hornwright.bench.job;

import hornwright.bench.survey.Decision;

/** What a person settled; it stands above every proposal. */
@Kind(word = "decided")
public record Decided(Decision decision) implements JobEdit {
    @Override
    public Fields fields() {
        return Fields.of("decision." + decision.about());
    }

    @Override
    public String inWords() {
        return "decided about %s: %s".formatted(decision.about(), decision.why());
    }
}
