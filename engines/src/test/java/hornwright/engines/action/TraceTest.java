package hornwright.engines.action;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import org.junit.jupiter.api.Test;

class TraceTest {
    private static final ActionInput KEY =
            new ActionInput(2e-6, 12e-3, 0.02, 5e-3, 25e-3, 12e-3, null, Bumper.givingBack(5e6, 1.5, 0.6, 0.3), 1e-3);

    @Test
    void a_trace_begins_shut_and_never_goes_back_in_time() {
        Trace trace = Trace.of(KEY);
        assertThat(trace.points().getFirst()).isEqualTo(new Trace.Point(0, 0));
        assertThat(trace.points()).extracting(Trace.Point::time).isSorted();
    }

    /** The engine's own answer is found another way: by its events, not by its points. */
    @Test
    void a_trace_touches_and_turns_back_where_the_engine_says() {
        ActionResult result = Action.reckon(KEY);
        Trace trace = Trace.of(KEY);
        double opening = Objects.requireNonNull(result.opening());
        double touch = trace.points().stream()
                .filter(point -> point.opened() >= KEY.travel() - 1e-12)
                .findFirst()
                .orElseThrow()
                .time();
        assertThat(touch).isCloseTo(opening, within(1e-9));
        ActionResult.Rebound first = result.rebounds().getFirst();
        assertThat(trace.points()).anySatisfy(point -> {
            assertThat(point.time()).isCloseTo(first.at(), within(1e-9));
            assertThat(point.opened()).isCloseTo(KEY.travel() - first.height(), within(1e-9));
        });
    }

    /** Half the torque's work has become speed by then: plain mechanics of the first flight, without friction and rate. */
    @Test
    void the_first_flight_is_the_parabola_of_a_steady_torque() {
        ActionInput plain =
                new ActionInput(2e-6, 12e-3, 0, 5e-3, 25e-3, 12e-3, null, Bumper.givingBack(5e6, 1.5, 0.6, 0.3), 0);
        for (Trace.Point point : Trace.of(plain).points().subList(0, 20)) {
            double opened = 25e-3 * 12e-3 / 2e-6 * point.time() * point.time() / 2;
            assertThat(point.opened()).isCloseTo(opened, within(1e-9));
        }
    }
}
