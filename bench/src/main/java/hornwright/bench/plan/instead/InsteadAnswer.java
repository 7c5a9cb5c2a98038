package hornwright.bench.plan.instead;

import hornwright.bench.plan.Becauses;
import java.util.List;

/**
 * What could lie at a place.
 *
 * @param built what the maker put there, laid new; the others are held against it
 * @param others what else there is: of the time first, then what changes least
 */
public record InsteadAnswer(String place, Substitute built, List<Substitute> others, Becauses becauses) {
    public InsteadAnswer {
        others = List.copyOf(others);
    }
}
