package hornwright.bench.sound;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Fingering;
import hornwright.bench.plan.Becauses;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.survey.PlayTest;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The horn as it came and as it is now. What differs by less than twice its uncertainty is called equal.
 *
 * @param earlier the first play test with notes; null when there are not two
 * @param later the last
 * @param common what all notes share of the difference; null when no note was played both times
 * @param leak the total leak; null when it was not read twice
 */
public record Comparison(
        @Nullable PlayTest earlier,
        @Nullable PlayTest later,
        @Nullable PlannedNumber common,
        List<NoteChange> notes,
        List<HeightChange> heights,
        @Nullable LeakChange leak,
        Becauses becauses) {
    public Comparison {
        notes = List.copyOf(notes);
        heights = List.copyOf(heights);
    }

    /**
     * One note both times, cents with what all notes of its session share taken off.
     *
     * @param difference later less earlier
     */
    public record NoteChange(Fingering fingering, PlannedNumber before, PlannedNumber after, PlannedNumber difference) {
        public boolean changed() {
            return differs(difference);
        }
    }

    /** One cup, millimetres at the front edge. */
    public record HeightChange(Cup cup, PlannedNumber before, PlannedNumber now, PlannedNumber difference) {
        public boolean changed() {
            return differs(difference);
        }
    }

    /** The total leak. */
    public record LeakChange(PlannedNumber before, PlannedNumber now, PlannedNumber difference) {
        public boolean changed() {
            return differs(difference);
        }
    }

    private static boolean differs(PlannedNumber difference) {
        return Math.abs(difference.value()) > 2 * difference.u();
    }
}
