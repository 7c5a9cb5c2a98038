package hornwright.bench.plan;

import org.jspecify.annotations.Nullable;

/**
 * One number of the plan.
 *
 * @param value best estimate in the unit
 * @param unit "mm", "h", "" for a pure number
 * @param u one standard uncertainty, in the same unit; 0 for a choice
 * @param because id in the table of {@link Becauses}
 * @param low lower end of the window that works; null when no window is claimed
 * @param high upper end of it
 * @param at for heights only: where on the hole
 */
public record PlannedNumber(
        double value,
        String unit,
        double u,
        String because,
        @Nullable Double low,
        @Nullable Double high,
        @Nullable HeightPoint at) {
    public PlannedNumber {
        if (!Double.isFinite(value) || !(u >= 0) || Double.isInfinite(u)) {
            throw new IllegalArgumentException(
                    "a planned number is finite with an uncertainty, got " + value + " ± " + u + " of " + because);
        }
        if (because.isBlank()) {
            throw new IllegalArgumentException("a number that cannot explain itself is not shown: " + value);
        }
    }

    public PlannedNumber within(double from, double to) {
        return new PlannedNumber(value, unit, u, because, from, to, at);
    }

    public PlannedNumber at(HeightPoint point) {
        return new PlannedNumber(value, unit, u, because, low, high, point);
    }

    /** Whether a window is claimed. */
    public boolean hasWindow() {
        return low != null && high != null;
    }
}
