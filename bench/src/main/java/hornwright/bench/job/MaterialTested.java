package hornwright.bench.job;

import hornwright.bench.material.BenchTest;

/** A figure of a material learned at this shop's bench. Undoing it takes the test back. */
@Kind(word = "material-tested")
public record MaterialTested(String id, BenchTest test) implements RulesEdit {
    @Override
    public Fields fields() {
        return Fields.of("test." + id);
    }

    @Override
    public String inWords() {
        return "tested: " + test.inWords();
    }
}
