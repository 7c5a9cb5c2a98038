package hornwright.bench.job;

/** A whole job brought in from a file or another shop; one edit, so that one undo takes it out again. */
@Kind(word = "job-imported", version = 6)
public record JobImported(Job job) implements JobEdit {
    @Override
    public Fields fields() {
        return Fields.ALL;
    }

    @Override
    public String inWords() {
        return "imported: " + job.title();
    }
}
