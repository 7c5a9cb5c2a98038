package hornwright.bench.plan;

import hornwright.bench.survey.Condition;
import hornwright.bench.survey.Originality;
import org.jspecify.annotations.Nullable;

/**
 * What is at a place now.
 *
 * @param byGroup whether only the group was looked over, so that this place may differ
 */
public record Found(
        @Nullable String material,
        @Nullable Double thicknessMm,
        @Nullable String colour,
        Condition condition,
        Originality originality,
        boolean byGroup) {}
