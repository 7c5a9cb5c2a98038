package hornwright.bench.job;

/** A change to what lies on the shelf. */
public sealed interface StockEdit extends Edit permits StockPut, StockUsed, Undone {
    @Override
    default boolean belongsIn(StreamName stream) {
        return stream.equals(StreamName.STOCK);
    }
}
