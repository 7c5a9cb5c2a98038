package hornwright.bench.sheet;

import hornwright.bench.care.Hazard;
import hornwright.bench.survey.Treatment.Reversible;
import java.util.List;

/**
 * Something that can be done, least intrusive first in its list.
 *
 * @param what an instruction
 * @param limit where to stop; empty when there is nothing to overdo
 * @param fromMin least minutes it takes a practised hand (bench judgement, check yours)
 * @param toMin most minutes
 * @param undo whether it can be undone
 * @param cautions what to mind
 */
public record Remedy(String what, String limit, int fromMin, int toMin, Reversible undo, List<Hazard> cautions) {
    public Remedy {
        cautions = List.copyOf(cautions);
        if (fromMin < 0 || toMin < fromMin) {
            throw new IllegalArgumentException("minutes go from less to more, got " + fromMin + " to " + toMin);
        }
    }

    public static Remedy of(String what, String limit, int fromMin, int toMin, Reversible undo, Hazard... cautions) {
        return new Remedy(what, limit, fromMin, toMin, undo, List.of(cautions));
    }
}
