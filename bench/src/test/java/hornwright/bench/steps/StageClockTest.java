package hornwright.bench.steps;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.bench.survey.Observed;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.Stage;
import hornwright.bench.survey.Unit;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class StageClockTest {
    private static final Instant MORNING = Instant.parse("2026-11-25T09:00:00Z");

    @Test
    void a_clock_that_nobody_started_stands_at_nothing() {
        StageClock clock = StageClock.of(List.of());
        assertThat(clock.running()).isNull();
        assertThat(clock.total()).isZero();
    }

    @Test
    void a_started_clock_runs_on_whoever_looks() {
        StageClock clock = StageClock.of(List.of(started("s.1", Stage.KEYS_FITTED, 0)));
        StageClock.Running running = Objects.requireNonNull(clock.running());
        assertThat(running.stage()).isEqualTo(Stage.KEYS_FITTED);
        assertThat(running.minutes(MORNING.plusSeconds(42 * 60))).isEqualTo(42);
    }

    @Test
    void a_stretch_that_was_stopped_is_added_and_the_clock_stands() {
        StageClock clock = StageClock.of(List.of(
                started("s.1", Stage.KEYS_FITTED, 0),
                spent("t.1", Stage.KEYS_FITTED, 40, 40),
                spent("t.2", Stage.KEYS_FITTED, 60, 15)));
        assertThat(clock.running()).isNull();
        assertThat(clock.minutes(Stage.KEYS_FITTED)).isEqualTo(55);
    }

    @Test
    void starting_again_after_a_stop_runs_from_the_new_start() {
        StageClock clock =
                StageClock.of(List.of(spent("t.1", Stage.KEYS_FITTED, 40, 40), started("s.2", Stage.HOLES_LEVEL, 50)));
        assertThat(Objects.requireNonNull(clock.running()).stage()).isEqualTo(Stage.HOLES_LEVEL);
        assertThat(clock.minutes(Stage.HOLES_LEVEL)).isZero();
        assertThat(clock.total()).isEqualTo(40);
    }

    private static Reading started(String id, Stage stage, int minute) {
        return reading(id, ReadingKind.CLOCK_STARTED, stage, minute, new Observed.Says("started"));
    }

    private static Reading spent(String id, Stage stage, int minute, double minutes) {
        return reading(id, ReadingKind.TIME_SPENT, stage, minute, new Observed.Amount(minutes, Unit.MINUTE, null));
    }

    private static Reading reading(String id, ReadingKind kind, Stage stage, int minute, Observed observed) {
        Instant when = MORNING.plusSeconds(60L * minute);
        return new Reading(id, kind, stage.word(), "", observed, "clock", "", "", when, stage, StageClock.SERIES);
    }
}
