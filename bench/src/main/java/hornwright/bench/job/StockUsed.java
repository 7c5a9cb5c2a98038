package hornwright.bench.job;

import org.jspecify.annotations.Nullable;

/**
 * Pieces taken from the shelf.
 *
 * @param job the job they went into; null for waste and gifts
 */
@Kind(word = "stock-used")
public record StockUsed(String item, int count, @Nullable String job) implements StockEdit {
    public StockUsed {
        if (count < 1) {
            throw new IllegalArgumentException("at least one piece is used, not " + count);
        }
    }

    @Override
    public Fields fields() {
        return Fields.of("stock." + item);
    }

    @Override
    public String inWords() {
        return "%d of %s used".formatted(count, item);
    }
}
