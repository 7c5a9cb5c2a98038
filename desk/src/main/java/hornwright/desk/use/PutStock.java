package hornwright.desk.use;

import hornwright.bench.job.StockPut;
import hornwright.bench.job.StreamName;
import hornwright.bench.stock.StockItem;

/** Puts a line on the shelf, or says how it is now. */
public record PutStock(Shop shop) {
    public Saved put(Form form, StockItem item) {
        return shop.save(StreamName.STOCK, form, new StockPut(item));
    }
}
