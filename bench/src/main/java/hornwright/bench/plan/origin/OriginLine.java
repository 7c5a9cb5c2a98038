package hornwright.bench.plan.origin;

import hornwright.bench.archive.Grade;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Places of which the same may be said.
 *
 * @param grade of the history the line states; null when it states none
 * @param what the places by kind, "9 feet, 4 springs"
 * @param words what is said of them, with the grade
 */
public record OriginLine(Verdict verdict, @Nullable Grade grade, String what, String words, List<String> places) {
    public OriginLine {
        places = List.copyOf(places);
    }
}
