package hornwright.bench.plan;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the work takes, as ranges.
 *
 * @param hours null for a voice nobody has hours for
 * @param cost null when the hours are
 * @param parts what the goods cost
 */
public record Money(
        List<HourLine> lines,
        @Nullable PlannedNumber hours,
        @Nullable PlannedNumber parts,
        @Nullable PlannedNumber cost,
        String currency) {
    public Money {
        lines = List.copyOf(lines);
    }
}
