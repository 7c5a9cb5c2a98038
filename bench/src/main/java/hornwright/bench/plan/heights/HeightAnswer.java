package hornwright.bench.plan.heights;

import hornwright.bench.plan.Becauses;
import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.PlannedNumber;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The height of one cup.
 *
 * @param pad place of its pad, which carries the heights
 * @param heights by name
 * @param foot place of the piece that is cut to it; null when the stop carries none
 * @param footNumbers sizes of that piece
 */
public record HeightAnswer(
        String cup,
        String pad,
        Map<NumberName, PlannedNumber> heights,
        @Nullable String foot,
        Map<NumberName, PlannedNumber> footNumbers,
        Becauses becauses) {
    public HeightAnswer {
        heights = Collections.unmodifiableMap(new LinkedHashMap<>(heights));
        footNumbers = Collections.unmodifiableMap(new LinkedHashMap<>(footNumbers));
    }

    /** The front height as the cup stands, or stood before strip-down. */
    public @Nullable PlannedNumber asItStands() {
        PlannedNumber now = heights.get(NumberName.HEIGHT_NOW);
        return now == null ? heights.get(NumberName.HEIGHT_BEFORE) : now;
    }
}
