package hornwright.bench.steps;

import hornwright.bench.survey.Observed;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.Stage;
import java.time.Duration;
import java.time.Instant;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Time spent at each stage. A start and each stretch of work are readings with the time they were written down, so a
 * clock runs on when the program does not.
 *
 * @param spent minutes by stage, without what is running now
 * @param running null when the clock stands
 */
public record StageClock(Map<Stage, Double> spent, @Nullable Running running) {
    /** What repeats stretches of work so that they add up instead of correcting each other. */
    public static final String SERIES = "clock";

    /** A clock that runs. */
    public record Running(Stage stage, Instant since) {
        /** Whole minutes until now, at least one: a stretch that was worth starting was worth a minute. */
        public double minutes(Instant now) {
            return Math.max(1, Math.round(Duration.between(since, now).toSeconds() / 60.0));
        }
    }

    public StageClock {
        Map<Stage, Double> copy = new EnumMap<>(Stage.class);
        copy.putAll(spent);
        spent = Collections.unmodifiableMap(copy);
    }

    /** @param readings those of the job, in the order they were written down */
    public static StageClock of(List<Reading> readings) {
        Map<Stage, Double> spent = new EnumMap<>(Stage.class);
        Running running = null;
        for (Reading reading : readings) {
            Optional<Stage> stage = stage(reading.of());
            Instant when = reading.when();
            if (stage.isEmpty()) {
                continue;
            }
            if (reading.kind() == ReadingKind.TIME_SPENT && reading.observed() instanceof Observed.Amount minutes) {
                spent.merge(stage.get(), minutes.value(), Double::sum);
                running = null;
            } else if (reading.kind() == ReadingKind.CLOCK_STARTED && when != null) {
                running = new Running(stage.get(), when);
            }
        }
        return new StageClock(spent, running);
    }

    public double minutes(Stage stage) {
        return spent.getOrDefault(stage, 0.0);
    }

    public double total() {
        return spent.values().stream().mapToDouble(Double::doubleValue).sum();
    }

    private static Optional<Stage> stage(String word) {
        for (Stage stage : Stage.values()) {
            if (stage.word().equals(word)) {
                return Optional.of(stage);
            }
        }
        return Optional.empty();
    }
}
