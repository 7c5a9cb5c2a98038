package hornwright.desk.use;

import hornwright.bench.job.StockUsed;
import hornwright.bench.job.StreamName;
import hornwright.bench.stock.StockItem;
import hornwright.desk.json.BadInput;
import org.jspecify.annotations.Nullable;

/** Takes pieces from the shelf. */
public record UseStock(Shop shop) {
    /** @param job the job they go into; null for waste. Two benches may take from one line at once. */
    public Saved use(Form form, String item, int count, @Nullable String job) {
        StockItem line = shop.stock().state().items().stream()
                .filter(one -> one.id().equals(item))
                .findFirst()
                .orElseThrow(() -> new BadInput("/item", "the shelf has no \"" + item + "\"", "an id of the shelf"));
        if (count < 1 || (count > line.count() && isNew(form))) {
            throw new BadInput(
                    "/count", "%d of %s cannot be taken, there are %d".formatted(count, item, line.count()), "1");
        }
        while (true) {
            Form now = new Form(shop.stock().seq(), form.hand(), form.key());
            Saved saved = shop.save(StreamName.STOCK, now, new StockUsed(item, count, job));
            if (!(saved instanceof Saved.Conflict)) {
                return saved;
            }
        }
    }

    private boolean isNew(Form form) {
        return shop.data().journal().withKey(form.key()).isEmpty();
    }
}
