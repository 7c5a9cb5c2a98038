package hornwright.desk.virtual;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.bench.horn.Keywork;
import hornwright.desk.keyworkfile.KeyworkFile;
import hornwright.desk.virtual.Survey.Length;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whether the plan helps on horns whose truth is known, and whether what it states is so. Figures: docs/truth.md. */
final class VirtualBenchTest {
    /** What was tuned was tuned on seeds below this one. */
    private static final int FIRST_UNSEEN = 1001;

    private static Keywork keywork(String name) {
        return KeyworkFile.shipped("tarrant-loe-" + name).orElseThrow();
    }

    @Test
    void a_few_altos_take_fewer_heats_and_less_work_twice_than_the_usual_way() {
        Campaign campaign = Campaign.of(keywork("alto"), 1, 20);
        Count hour = campaign.planned(Length.HOUR_AS_ASKED);
        assertThat(hour.heatsAPad()).isLessThan(0.85 * campaign.usual().heatsAPad());
        assertThat(hour.reworksAHorn()).isLessThan(0.5 * campaign.usual().reworksAHorn());
        assertThat(hour.sealed()).isGreaterThan(0.99);
    }

    @Tag("deep")
    @Tag("bench")
    @ParameterizedTest
    @ValueSource(strings = {"alto", "tenor"})
    void a_thousand_horns_tell_what_the_plan_is_worth(String voice) {
        Campaign campaign = Campaign.of(keywork(voice), FIRST_UNSEEN, FIRST_UNSEEN + 999);
        campaign.print();
    }

    @Test
    void a_point_that_turns_far_lifts_less_than_its_arc() {
        Turning level = new Turning(40, 0);
        assertThat(level.lift(0.2)).isCloseTo(40 * Math.sin(0.2), within(1e-12));
        Turning below = new Turning(40, 4);
        assertThat(below.rotation(below.lift(0.15))).isCloseTo(0.15, within(1e-12));
    }
}
