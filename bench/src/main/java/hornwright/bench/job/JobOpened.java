package hornwright.bench.job;

/** A horn came in: which one, whose, and what is wrong with it. */
@Kind(word = "job-opened")
public record JobOpened(Identity identity, Arrival arrival) implements JobEdit {
    @Override
    public Fields fields() {
        return Fields.ALL;
    }

    @Override
    public String inWords() {
        return "opened: " + identity.inWords();
    }
}
