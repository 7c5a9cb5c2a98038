package hornwright.bench.job;

import hornwright.bench.archive.Statement;

/** A paper, a book or a person speaking of many horns of one maker. */
@Kind(word = "statement-added")
public record StatementAdded(String maker, Statement statement) implements ArchiveEdit {
    @Override
    public Fields fields() {
        return Fields.of("evidence." + statement.evidence().id());
    }

    @Override
    public String inWords() {
        return "statement on %s: %s".formatted(statement.place(), statement.material());
    }
}
