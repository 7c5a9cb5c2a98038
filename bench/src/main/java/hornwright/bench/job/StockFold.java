package hornwright.bench.job;

import hornwright.bench.stock.Stock;
import hornwright.bench.stock.StockItem;
import java.util.ArrayList;
import java.util.List;

/** How the edits of the shelf add up: a line put twice is the later one, and nothing is less than none. */
public record StockFold() implements Folding<Stock> {
    @Override
    public Stock start() {
        return Stock.empty();
    }

    @Override
    public Stock with(Stock stock, Posted posted) {
        return switch (posted.edit()) {
            case StockPut put -> put(stock, put.item());
            case StockUsed used -> used(stock, used);
            default ->
                throw new IllegalStateException(
                        "'%s' does not change the stock".formatted(posted.edit().inWords()));
        };
    }

    private static Stock put(Stock stock, StockItem item) {
        List<StockItem> items = new ArrayList<>(stock.items());
        int at = 0;
        while (at < items.size() && !items.get(at).id().equals(item.id())) {
            at++;
        }
        if (at < items.size()) {
            items.set(at, item);
        } else {
            items.add(item);
        }
        return new Stock(items);
    }

    private static Stock used(Stock stock, StockUsed used) {
        return new Stock(stock.items().stream()
                .map(item -> item.id().equals(used.item()) ? less(item, used.count()) : item)
                .toList());
    }

    private static StockItem less(StockItem item, int count) {
        return new StockItem(
                item.id(),
                item.kind(),
                item.material(),
                item.diameterMm(),
                item.thicknessMm(),
                Math.max(0, item.count() - count),
                item.price());
    }
}
