package hornwright.engines.linkage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class LinkageTest {
    private static final List<Press> LIGHT = List.of(new Press("d", 0.55, 0.035));

    private static LinkageResult reckon(Mechanism mechanism) {
        return Linkage.reckon(new LinkageInput(mechanism, LIGHT, Trio.SETS, null));
    }

    @Test
    void a_sensitivity_is_the_difference_of_two_whole_reckonings() {
        Mechanism trio = Trio.of(1e-5, -2e-5, 0);
        LinkageResult result = reckon(trio);
        for (int link = 0; link < 2; link++) {
            double thicker = trio.links().get(link).thickness() + 1e-4;
            Equilibrium changed = reckon(trio.withLinkThicknesses(
                            Map.of(trio.links().get(link).id(), thicker)))
                    .pressed();
            for (int cup = 0; cup < 3; cup++) {
                double difference =
                        changed.cups().gap()[cup] - result.pressed().cups().gap()[cup];
                assertThat(result.sensitivity()[link][cup]).isCloseTo(difference, within(1e-13));
            }
        }
        assertThat(result.sensitivity()[1][2])
                .as("more at f-sharp>bis closes bis")
                .isNegative();
    }

    @Test
    void with_nothing_pressed_the_cups_stand_at_the_height_of_their_feet() {
        LinkageResult result = reckon(Trio.of(0, 0, 0));
        for (int cup = 0; cup < 3; cup++) {
            double height = Trio.RESTS[cup] * Trio.of(0, 0, 0).cups().get(cup).arm();
            assertThat(result.free().cups().gap()[cup]).isCloseTo(height, within(1e-5));
        }
    }

    @Test
    void without_a_spread_there_is_no_yield() {
        assertThat(reckon(Trio.of(0, 0, 0)).yield()).isNull();
    }
}
