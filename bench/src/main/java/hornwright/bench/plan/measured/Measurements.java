package hornwright.bench.plan.measured;

import hornwright.bench.plan.PlanInputs;
import hornwright.bench.plan.StaleReading;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.Stage;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The readings of a job by what was measured and on what; fresh ones apart from those that no longer count. */
public final class Measurements {
    private record Topic(ReadingKind kind, String of) {}

    private final Map<Topic, List<Reading>> fresh = new LinkedHashMap<>();
    private final Map<Topic, List<Reading>> baseline = new LinkedHashMap<>();
    private final Map<Reading, String> stale = new LinkedHashMap<>();

    private Measurements() {}

    public static Measurements of(PlanInputs inputs) {
        return of(Freshness.of(inputs), inputs.readings());
    }

    private static Measurements of(Freshness freshness, List<Reading> readings) {
        Measurements all = new Measurements();
        for (Reading reading : readings) {
            Topic topic = new Topic(reading.kind(), reading.of());
            if (reading.stage() == Stage.ARRIVAL) {
                add(all.baseline, topic, reading);
            }
            all.stale.keySet().removeIf(earlier -> replaces(reading, earlier));
            freshness
                    .whyStale(reading)
                    .ifPresentOrElse(why -> all.stale.put(reading, why), () -> add(all.fresh, topic, reading));
        }
        return all;
    }

    /**
     * What still counts for one thing: at each point the last reading, or all of its series. Several points, as along
     * and across the hinge, come back in the order they were read.
     */
    public List<Reading> of(ReadingKind kind, String of) {
        return fresh.getOrDefault(new Topic(kind, of), List.of());
    }

    /** The same of what was measured before anything was touched, whether it still counts or not. */
    public List<Reading> before(ReadingKind kind, String of) {
        return baseline.getOrDefault(new Topic(kind, of), List.of());
    }

    public boolean has(ReadingKind kind, String of) {
        return !of(kind, of).isEmpty();
    }

    /** All fresh readings of a kind. */
    public Stream<Reading> all(ReadingKind kind) {
        return fresh.entrySet().stream()
                .filter(entry -> entry.getKey().kind() == kind)
                .flatMap(entry -> entry.getValue().stream());
    }

    public List<StaleReading> stale() {
        return stale.entrySet().stream()
                .map(entry -> new StaleReading(entry.getKey().id(), entry.getValue()))
                .toList();
    }

    /** A later reading at the same point takes the place of the one before, unless both repeat one series. */
    private static void add(Map<Topic, List<Reading>> topics, Topic topic, Reading reading) {
        List<Reading> there = topics.computeIfAbsent(topic, none -> new ArrayList<>());
        there.removeIf(earlier -> replaces(reading, earlier));
        there.add(reading);
    }

    private static boolean replaces(Reading later, Reading earlier) {
        return earlier.kind() == later.kind()
                && earlier.of().equals(later.of())
                && earlier.point().equals(later.point())
                && !sameSeries(earlier, later);
    }

    private static boolean sameSeries(Reading earlier, Reading later) {
        return earlier.series() != null && earlier.series().equals(later.series());
    }
}
