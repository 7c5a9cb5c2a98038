package hornwright.bench.stock;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/** The whole shelf. */
public record Stock(List<StockItem> items) {
    public Stock {
        items = List.copyOf(items);
    }

    public static Stock empty() {
        return new Stock(List.of());
    }

    public Stream<StockItem> of(StockKind kind) {
        return items.stream().filter(item -> item.kind() == kind);
    }

    /** Every thickness kept of a kind of goods, thinnest first. */
    public List<Double> thicknesses(StockKind kind) {
        return of(kind).map(StockItem::thicknessMm)
                .filter(Objects::nonNull)
                .distinct()
                .sorted()
                .toList();
    }

    /** The thinnest goods of these kinds at least so thick; material "" takes any. */
    public Optional<StockItem> nearestAbove(List<StockKind> kinds, String material, double thicknessMm) {
        return items.stream()
                .filter(item -> kinds.contains(item.kind()))
                .filter(item -> material.isEmpty() || item.material().equals(material))
                .filter(item -> thickness(item) >= thicknessMm - 1e-9)
                .min(Comparator.comparingDouble(Stock::thickness).thenComparing(StockItem::id));
    }

    private static double thickness(StockItem item) {
        Double thickness = item.thicknessMm();
        return thickness == null ? Double.NEGATIVE_INFINITY : thickness;
    }
}
