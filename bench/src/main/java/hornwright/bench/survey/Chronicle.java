package hornwright.bench.survey;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * In which order a job was decided, measured, worked on and signed off. It is the order of writing down, not that of the
 * clocks: two benches need not agree about the time.
 */
public record Chronicle(List<Happening> happenings) {
    public static final Chronicle NONE = new Chronicle(List.of());

    /** What is measured before a step and decides how it is done; all else may be the result of a step. */
    private static final Set<ReadingKind> INPUTS = EnumSet.of(ReadingKind.CUP_INSIDE, ReadingKind.CUP_DEPTH);

    public Chronicle {
        happenings = List.copyOf(happenings);
    }

    public static boolean isInput(Reading reading) {
        return INPUTS.contains(reading.kind());
    }

    public Chronicle and(Happening next) {
        List<Happening> more = new ArrayList<>(happenings);
        more.add(next);
        return new Chronicle(more);
    }

    /** The work that is not in here, such as what is only supposed; it counts as the latest. */
    public List<WorkDone> without(List<WorkDone> done) {
        List<WorkDone> rest = new ArrayList<>(done);
        for (Happening happening : happenings) {
            if (happening instanceof Happening.Worked worked) {
                rest.remove(worked.work());
            }
        }
        return rest;
    }
}
