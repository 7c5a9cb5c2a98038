package hornwright.bench.plan;

import hornwright.bench.horn.Identified;
import hornwright.bench.survey.Treatment;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One place of the horn as the plan has it.
 *
 * @param found null when nobody has looked
 * @param why the treatment is proposed, one line
 * @param material what goes there; what is there when it is kept; null when that is not known
 * @param choices for a pad: the stocked thicknesses and what each leaves to float
 * @param padClass of a pad: how readily it gives; null for anything else
 * @param provisional why its numbers may still change before anything is cut or ordered; null when they stand
 * @param advice what to do, least intrusive first
 */
public record PlannedPlace(
        String id,
        Built asBuilt,
        @Nullable Found found,
        Treatment treatment,
        String why,
        @Nullable String material,
        Map<NumberName, PlannedNumber> numbers,
        List<PadChoice> choices,
        @Nullable ClassOfPad padClass,
        @Nullable String provisional,
        List<Advice> advice)
        implements Identified {
    public PlannedPlace {
        numbers = Collections.unmodifiableMap(new LinkedHashMap<>(numbers));
        choices = List.copyOf(choices);
        advice = List.copyOf(advice);
    }

    public Optional<PlannedNumber> number(NumberName name) {
        return Optional.ofNullable(numbers.get(name));
    }

    /** Whether something new goes in: everything but keeping, cleaning and refitting what is there. */
    public boolean isRenewed() {
        return switch (treatment) {
            case REPLACE_LIKE, SUBSTITUTE, MAKE -> true;
            case KEEP, CLEAN, REFIT, DECIDE -> false;
        };
    }
}
