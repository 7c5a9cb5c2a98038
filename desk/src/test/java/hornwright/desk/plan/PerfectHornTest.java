package hornwright.desk.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Layer;
import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.Plan;
import hornwright.bench.plan.Planner;
import hornwright.desk.keyworkfile.KeyworkFile;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A horn read without error comes back from the plan as it was built. */
final class PerfectHornTest {
    static final List<String> SHIPPED = KeyworkFile.SHIPPED;
    private static final Offset<Double> CLOSE = within(0.02);

    @ParameterizedTest
    @FieldSource("SHIPPED")
    void its_own_pads_come_back_in_diameter_and_thickness(String name) {
        Keywork keywork = KeyworkFile.shipped(name).orElseThrow();
        Plan plan = Planner.plan(PerfectReadings.of(keywork, 0, 0));
        for (Cup cup : keywork.cups()) {
            assertThat(value(plan, "pad." + cup.hole(), NumberName.DIAMETER))
                    .as(cup.id())
                    .isEqualTo(cup.pad().diameterMm());
            assertThat(value(plan, "pad." + cup.hole(), NumberName.THICKNESS))
                    .as(cup.id())
                    .isCloseTo(cup.pad().thicknessMm(), CLOSE);
        }
    }

    @ParameterizedTest
    @FieldSource("SHIPPED")
    void the_stocked_pad_it_was_built_with_is_chosen_and_leaves_its_own_film(String name) {
        Keywork keywork = KeyworkFile.shipped(name).orElseThrow();
        Plan plan = Planner.plan(PerfectReadings.of(keywork, 0.1, 0));
        for (Cup cup : keywork.cups()) {
            assertThat(value(plan, "pad." + cup.hole(), NumberName.CHOSEN_THICKNESS))
                    .as(cup.id())
                    .isEqualTo(cup.pad().thicknessMm());
            assertThat(value(plan, "pad." + cup.hole(), NumberName.FLOAT))
                    .as(cup.id())
                    .isCloseTo(cup.adhesive().thicknessMm(), CLOSE);
        }
    }

    /** A vent is small and its arm long: a stack off by a third of a millimetre still looks level. */
    @ParameterizedTest
    @FieldSource("SHIPPED")
    void a_level_trial_pad_tells_little_on_an_octave_vent_and_much_elsewhere(String name) {
        Keywork keywork = KeyworkFile.shipped(name).orElseThrow();
        Plan plan = Planner.plan(PerfectReadings.of(keywork, 0, 0));
        for (Cup cup : keywork.cups()) {
            double u = plan.number("pad." + cup.hole(), NumberName.THICKNESS)
                    .orElseThrow()
                    .u();
            assertThat(u > 0.15).as(cup.id()).isEqualTo(keywork.holeOf(cup).octaveVent());
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.35, -0.1, 0, 0.1, 0.35})
    void the_gap_between_the_rims_comes_back_whatever_trial_stack_was_tried(double stackOff) {
        for (String name : SHIPPED) {
            Keywork keywork = KeyworkFile.shipped(name).orElseThrow();
            Plan plan = Planner.plan(PerfectReadings.of(keywork, stackOff, 0));
            for (Cup cup : keywork.cups()) {
                assertThat(value(plan, "pad." + cup.hole(), NumberName.PARALLEL_GAP))
                        .as(cup.id())
                        .isCloseTo(cup.parallelGapMm(), CLOSE);
                assertThat(value(plan, "pad." + cup.hole(), NumberName.PROUD))
                        .as(cup.id())
                        .isCloseTo(stackOff, CLOSE);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.05, 0.15})
    void its_own_feet_come_back_however_far_the_old_ones_are_packed(double packed) {
        for (String name : SHIPPED) {
            Keywork keywork = KeyworkFile.shipped(name).orElseThrow();
            Plan plan = Planner.plan(PerfectReadings.of(keywork, 0, packed));
            for (Cup cup : keywork.cups()) {
                Layer foot = keywork.keyOf(cup).stop().layers().getFirst();
                assertThat(value(plan, foot.place(), NumberName.THICKNESS))
                        .as(foot.place())
                        .isCloseTo(foot.thicknessMm(), CLOSE);
            }
        }
    }

    static double value(Plan plan, String place, NumberName name) {
        return plan.number(place, name)
                .orElseThrow(() -> new AssertionError(place + " has no " + name.word()))
                .value();
    }
}
