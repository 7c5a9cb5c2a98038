package hornwright.bench.job;

/**
 * One small typed change. Every change to a job, the archive, the stock or the shop rules is one of these, and nothing
 * else is ever stored about them. Each record carries a fixed {@link Kind}; fields may be added only with a default, so
 * that every edit ever kept can be read for ever.
 */
public sealed interface Edit permits JobEdit, ArchiveEdit, StockEdit, RulesEdit {

    /** What it writes: two edits that write the same field stand on one another. */
    Fields fields();

    /** The edit in the words of the bench, without a full stop, as the history shows it. */
    String inWords();

    /** Whether an edit of this sort may be kept in that stream. */
    boolean belongsIn(StreamName stream);
}
