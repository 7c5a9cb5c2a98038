package hornwright.bench.plan.treatment;

import hornwright.bench.plan.Built;
import hornwright.bench.plan.Found;
import hornwright.bench.survey.Treatment;
import org.jspecify.annotations.Nullable;

/**
 * One place with what was there, what is there and what is done.
 *
 * @param found null when nobody has looked
 * @param why one line
 * @param material what is there afterwards; null when not known
 * @param decided whether a person settled it
 */
public record PlaceTreatment(
        String place,
        Built built,
        @Nullable Found found,
        Treatment treatment,
        String why,
        @Nullable String material,
        boolean decided) {
    /** Whether something new goes in, or may: a place to be looked at counts as renewed until it is settled. */
    public boolean mayNeedNew() {
        return switch (treatment) {
            case REPLACE_LIKE, SUBSTITUTE, MAKE, DECIDE -> true;
            case KEEP, CLEAN, REFIT -> false;
        };
    }

    public boolean provisional() {
        return treatment == Treatment.DECIDE;
    }
}
