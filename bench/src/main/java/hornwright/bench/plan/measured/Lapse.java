package hornwright.bench.plan.measured;

import hornwright.bench.horn.TradeNames;
import hornwright.bench.plan.PlanInputs;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.Stage;
import hornwright.bench.survey.Subject;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Readings of one kind that do not count any more.
 *
 * @param things by their trade names, each once
 */
public record Lapse(ReadingKind kind, List<String> things) {
    private static final int NAMED = 4;

    public Lapse {
        things = List.copyOf(things);
    }

    /** What saying this stage would void of what still counts; empty for one that was reached already. */
    public static List<Lapse> by(PlanInputs inputs, Stage stage) {
        Freshness freshness = Freshness.of(inputs);
        return group(
                inputs,
                reading -> freshness.whyStale(reading).isEmpty()
                        && freshness.voidingStage(reading, stage).isPresent());
    }

    /** What was read and counts no longer. */
    public static List<Lapse> already(PlanInputs inputs) {
        Freshness freshness = Freshness.of(inputs);
        return group(inputs, reading -> freshness.whyStale(reading).isPresent());
    }

    /** "front height of 24", "play of D, E". */
    public String inWords() {
        if (kind.subject() == Subject.HORN) {
            return kind.word();
        }
        return "%s of %s".formatted(kind.word(), things.size() > NAMED ? things.size() : String.join(", ", things));
    }

    private static List<Lapse> group(PlanInputs inputs, Predicate<Reading> which) {
        Map<ReadingKind, Set<String>> things = new LinkedHashMap<>();
        inputs.readings().stream()
                .filter(which)
                .forEach(reading -> things.computeIfAbsent(reading.kind(), none -> new LinkedHashSet<>())
                        .add(TradeNames.of(inputs.keywork(), reading.of())));
        return things.entrySet().stream()
                .map(entry -> new Lapse(entry.getKey(), List.copyOf(entry.getValue())))
                .toList();
    }
}
