package hornwright.bench.survey;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * In which order a job was decided, measured, worked on and signed off. It is the order of writing down, not that of the
 * clocks: two benches need not agree about the time.
 */
public record Chronicle(List<Happening> happenings) {
    public static final Chronicle NONE = new Chronicle(List.of());

    /** What no step is made to suit and none is judged by. */
    private static final Set<ReadingKind> ASIDE = EnumSet.of(
            ReadingKind.TUNING,
            ReadingKind.STAMP,
            ReadingKind.SERIAL,
            ReadingKind.SWITCH,
            ReadingKind.CLOCK_STARTED,
            ReadingKind.TIME_SPENT);

    public Chronicle {
        happenings = List.copyOf(happenings);
    }

    /** Whether a signature may be older than this reading. */
    public static boolean keeps(Reading reading) {
        return !ASIDE.contains(reading.kind());
    }

    /** The readings in here that were not taken back, the later after the earlier. */
    public List<Reading> readings() {
        Map<String, Reading> standing = new LinkedHashMap<>();
        for (Happening happening : happenings) {
            if (happening instanceof Happening.Measured measured) {
                standing.remove(measured.reading().id());
                standing.put(measured.reading().id(), measured.reading());
            }
            if (happening instanceof Happening.Withdrawn withdrawn) {
                standing.remove(withdrawn.reading());
            }
        }
        return List.copyOf(standing.values());
    }

    /** The decisions in here that stand. */
    public List<Decision> decisions() {
        Map<String, Decision> standing = new LinkedHashMap<>();
        for (Happening happening : happenings) {
            if (happening instanceof Happening.Settled settled) {
                standing.put(settled.decision().about(), settled.decision());
            }
            if (happening instanceof Happening.Dropped dropped) {
                standing.remove(dropped.about());
            }
        }
        return List.copyOf(standing.values());
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
