package hornwright.engines.linkage;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A mechanism and what is asked of it.
 *
 * @param presses fingers that press while the rest is found
 * @param landings cups that must land together
 * @param spread errors of a first assembly; null: no yield is wanted
 */
public record LinkageInput(
        Mechanism mechanism,
        List<Press> presses,
        List<Landing> landings,
        @Nullable Spread spread) {
    public LinkageInput {
        presses = List.copyOf(presses);
        landings = List.copyOf(landings);
    }
}
