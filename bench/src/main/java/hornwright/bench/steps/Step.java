package hornwright.bench.steps;

import hornwright.bench.horn.Identified;
import hornwright.bench.survey.Stage;
import java.util.List;

/**
 * One piece of bench work.
 *
 * @param id stable: {@code pad.f-sharp}, {@code regulate.d-to-f-sharp}
 * @param stage where it stands in the order of work
 * @param words what is done, as an instruction without a full stop
 * @param of the key, cup, hole, link or contact it is done to; empty for the whole horn
 * @param restsOn steps whose result this one was made to suit: when one of them changes, this one is looked at again
 * @param after steps that must come first but may change later without harm to this one
 */
public record Step(String id, Stage stage, String words, String of, List<String> restsOn, List<String> after)
        implements Identified {
    public Step {
        restsOn = List.copyOf(restsOn);
        after = List.copyOf(after);
    }

    /** Everything that must be done before this step. */
    public List<String> needs() {
        return java.util.stream.Stream.concat(restsOn.stream(), after.stream())
                .distinct()
                .toList();
    }
}
