package hornwright.bench.plan;

import hornwright.bench.stock.StockKind;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One sort of goods the horn needs.
 *
 * @param diameterMm null where it has none
 * @param thicknessMm null when it is not settled
 * @param thicknessWords how the thickness is ordered: "4.3", "4.1 to 4.5", or as a class
 * @param centre of a pad: "resonator 19 mm, brass"; empty otherwise
 * @param padClass of a pad: "soft" when somebody chose its class; empty otherwise
 * @param need for this horn, without spares
 * @param spares beyond need
 * @param onShelf of exactly this sort
 * @param provisional whether the sort may still change
 * @param places it goes to
 */
public record OrderLine(
        StockKind kind,
        String material,
        @Nullable Double diameterMm,
        @Nullable Double thicknessMm,
        String thicknessWords,
        String centre,
        String padClass,
        int need,
        int spares,
        int onShelf,
        boolean provisional,
        List<String> places) {
    public OrderLine {
        places = List.copyOf(places);
    }

    public int toOrder() {
        return Math.max(0, need + spares - onShelf);
    }
}
