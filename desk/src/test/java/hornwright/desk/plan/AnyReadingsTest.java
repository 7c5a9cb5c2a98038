package hornwright.desk.plan;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.Plan;
import hornwright.bench.plan.PlanInputs;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Planner;
import hornwright.bench.survey.Finding;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.Stage;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever happens to have been read, there is a plan, and it keeps its word. */
final class AnyReadingsTest {
    private static final PlanInputs HOUR = Examples.job("job");
    private static final List<Stage> STAGES = List.of(Stage.values());

    static Stream<Long> seeds() {
        return Stream.iterate(1L, seed -> seed + 1).limit(40);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void any_part_of_the_readings_at_any_stage_makes_a_plan_that_explains_itself(long seed) {
        Random random = new Random(seed);
        Plan plan = Planner.plan(some(random).at(STAGES.get(random.nextInt(STAGES.size()))));
        assertThat(EveryNumberSpeaksTest.numbers(plan))
                .allSatisfy(number ->
                        assertThat(plan.becauses().leaves(number.because())).isNotEmpty());
        assertThat(plan.places()).hasSize(HOUR.keywork().places().size());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void a_chosen_pad_always_lies_in_the_window_and_leaves_what_the_shop_allows(long seed) {
        PlanInputs job = some(new Random(seed));
        Plan plan = Planner.plan(job);
        plan.places().stream()
                .filter(place -> place.number(NumberName.CHOSEN_THICKNESS).isPresent())
                .forEach(place -> {
                    PlannedNumber window = place.number(NumberName.THICKNESS).orElseThrow();
                    double chosen = place.number(NumberName.CHOSEN_THICKNESS)
                            .orElseThrow()
                            .value();
                    assertThat(chosen).isBetween(window.low(), window.high());
                    assertThat(place.number(NumberName.FLOAT).orElseThrow().value())
                            .isBetween(
                                    job.rules().value("adhesive.small-least_mm"),
                                    job.rules().value("adhesive.most_mm"));
                });
    }

    /**
     * Of the readings whose value does not enter the slope of another: an arm or a hole that turns out longer than its
     * pattern makes every gap weigh more, so those are kept.
     */
    @ParameterizedTest
    @MethodSource("seeds")
    void a_trial_pad_or_a_cup_depth_never_makes_a_thickness_less_sure(long seed) {
        Random random = new Random(seed);
        List<Reading> fewer = HOUR.readings().stream()
                .filter(reading -> switch (reading.kind()) {
                    case TRIAL_PAD, CUP_DEPTH -> random.nextBoolean();
                    default -> true;
                })
                .toList();
        Plan part = Planner.plan(HOUR.withReadings(fewer));
        Plan whole = Planner.plan(HOUR);
        HOUR.keywork().cups().forEach(cup -> {
            double sure = whole.number("pad." + cup.hole(), NumberName.THICKNESS)
                    .orElseThrow()
                    .u();
            assertThat(part.number("pad." + cup.hole(), NumberName.THICKNESS)
                            .orElseThrow()
                            .u())
                    .as(cup.id())
                    .isGreaterThanOrEqualTo(sure - 1e-9);
        });
    }

    private static PlanInputs some(Random random) {
        double share = random.nextDouble();
        List<Reading> readings = HOUR.readings().stream()
                .filter(reading -> random.nextDouble() < share)
                .toList();
        List<Finding> findings = HOUR.findings().stream()
                .filter(finding -> random.nextDouble() < share)
                .toList();
        return HOUR.withReadings(readings).withFindings(findings);
    }
}
