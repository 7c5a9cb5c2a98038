package hornwright.bench.survey;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * Work already done to the horn. It voids the readings it disturbs and turns what depended on them to "recheck".
 *
 * @param id stable in the job
 * @param kind what was done
 * @param of key, cup, hole, link or place it was done to
 * @param when null counts as after every reading
 */
public record WorkDone(
        String id, WorkKind kind, String of, @Nullable Instant when) {}
