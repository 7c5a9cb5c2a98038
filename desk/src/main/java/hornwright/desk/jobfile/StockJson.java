package hornwright.desk.jobfile;

import hornwright.bench.stock.Stock;
import hornwright.bench.stock.StockItem;
import hornwright.bench.stock.StockKind;
import hornwright.desk.json.Bound;
import hornwright.desk.json.Fields;
import java.math.BigDecimal;
import java.util.List;

/** The shelf. */
final class StockJson {
    private StockJson() {}

    static Stock read(Fields file) {
        List<StockItem> items = file.list("stock", StockJson::item);
        file.uniqueIds("stock", items.stream().map(StockItem::id).toList());
        return new Stock(items);
    }

    private static StockItem item(Fields f) {
        Double price = f.numberIfAny("price", Bound.NOT_NEGATIVE, "3.20");
        return new StockItem(
                f.text("id", "pad-35-43"),
                f.choice("kind", Spoken.of(StockKind.values(), StockKind::word)),
                f.text("material", "natural cork"),
                f.numberIfAny("diameter_mm", Bound.POSITIVE, "35.0"),
                f.numberIfAny("thickness_mm", Bound.POSITIVE, "4.3"),
                (int) f.numberOr("count", 1, Bound.NOT_NEGATIVE, "4"),
                price == null ? null : BigDecimal.valueOf(price));
    }
}
