package hornwright.bench.plan;

import hornwright.bench.survey.ReadingKind;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A measurement nobody has taken yet, or whose reading has gone stale.
 *
 * @param kind what to measure; null for something to look at rather than to measure
 * @param of what to measure it on
 * @param measure in words: "low B♭: cup inside diameter, two ways"
 * @param decides what it would settle, in words
 * @param seconds about how long it takes
 * @param perishable whether it can only be had before strip-down
 */
public record Missing(
        @Nullable ReadingKind kind, String of, String measure, List<String> decides, int seconds, boolean perishable) {
    public Missing {
        decides = List.copyOf(decides);
    }
}
