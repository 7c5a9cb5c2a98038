package hornwright.bench.stock;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * One line of the shelf.
 *
 * @param diameterMm of a pad, disc, resonator or round spring; null where it has none
 * @param thicknessMm of a pad, sheet or disc; null where it has none
 * @param count pieces or sheets at hand
 * @param price each, in the shop's currency; null when not known
 */
public record StockItem(
        String id,
        StockKind kind,
        String material,
        @Nullable Double diameterMm,
        @Nullable Double thicknessMm,
        int count,
        @Nullable BigDecimal price) {
    public StockItem {
        requirePositive(diameterMm, "diameter");
        requirePositive(thicknessMm, "thickness");
        if (count < 0) {
            throw new IllegalArgumentException("a count is 0 or more, got " + count);
        }
    }

    private static void requirePositive(@Nullable Double size, String what) {
        if (size != null && !(size > 0)) {
            throw new IllegalArgumentException("a " + what + " must be more than 0, got " + size);
        }
    }
}
