package hornwright.bench.job;

import hornwright.bench.stock.StockItem;

/** A line of the shelf as it is now: new, counted again, or with another price. */
@Kind(word = "stock-put")
public record StockPut(StockItem item) implements StockEdit {
    @Override
    public Fields fields() {
        return Fields.of("stock." + item.id());
    }

    @Override
    public String inWords() {
        return "%s: %d".formatted(item.id(), item.count());
    }
}
