package hornwright.bench.survey;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One stroke of the brush: what all places of one kind in one group of keys are mostly made of. A finding at a single
 * place outranks it.
 *
 * @param group word of the key group
 * @param placeKind word of the place kind
 * @param mostly the commonest material
 * @param also other materials seen
 * @param missing how many places have lost theirs
 * @param thicknessMm one thickness measured for the group, if any
 * @param condition of most of them; null when nobody has said
 */
public record GroupFinding(
        String id,
        String group,
        String placeKind,
        String mostly,
        List<String> also,
        int missing,
        @Nullable Double thicknessMm,
        @Nullable Condition condition) {
    public GroupFinding {
        also = List.copyOf(also);
        if (missing < 0) {
            throw new IllegalArgumentException("a count of missing pieces is 0 or more, got " + missing);
        }
    }

    /** The state of most of them, unknown until somebody says it. */
    public Condition state() {
        return condition == null ? Condition.UNKNOWN : condition;
    }

    /** The same stroke over the places of another group; counts and thickness are this one's own. */
    public GroupFinding over(String id, String other) {
        return new GroupFinding(id, other, placeKind, mostly, List.of(), 0, null, condition);
    }
}
