package hornwright.bench.job;

/** Makes the fold pass over the edit with this seq of the same stream. */
@Kind(word = "undone")
public record Undone(long seq) implements JobEdit, ArchiveEdit, StockEdit, RulesEdit {
    public Undone {
        if (seq < 1) {
            throw new IllegalArgumentException("edits are counted from 1, not " + seq);
        }
    }

    /** None of its own: {@link History#fieldsOf} gives those of the edit it names. */
    @Override
    public Fields fields() {
        return Fields.of();
    }

    @Override
    public boolean belongsIn(StreamName stream) {
        return true;
    }

    @Override
    public String inWords() {
        return "edit %d undone".formatted(seq);
    }
}
