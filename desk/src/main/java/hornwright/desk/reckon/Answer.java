package hornwright.desk.reckon;

import hornwright.desk.json.Out;
import org.jspecify.annotations.Nullable;

/**
 * What an engine answers.
 *
 * @param out the result
 * @param shortfall what was asked for and could not be had (exit code 1), in a sentence; null if nothing
 */
public record Answer(Out out, @Nullable String shortfall) {
    public static Answer of(Out out) {
        return new Answer(out, null);
    }

    public static Answer falling(Out out, String shortfall) {
        return new Answer(out, shortfall);
    }
}
