package hornwright.desk.plan;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.bench.plan.Plan;
import hornwright.bench.plan.PlanInputs;
import hornwright.bench.plan.Planner;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** One reading changes what rests on it and nothing else. */
final class OneReadingTest {
    private final PlanInputs job = Examples.job("job");

    @Test
    void a_cup_depth_changes_only_the_rows_of_its_own_pad() {
        Plan before = Planner.plan(job);
        Plan after = Planner.plan(deeper(job, "cup.d"));
        Set<String> changed = before.places().stream()
                .filter(place -> !place.equals(after.place(place.id())))
                .map(place -> place.id())
                .collect(Collectors.toSet());
        assertThat(changed).containsExactly("pad.d");
        Set<String> becauses = before.becauses().byId().keySet().stream()
                .filter(id -> !before.becauses().get(id).equals(after.becauses().get(id)))
                .collect(Collectors.toSet());
        assertThat(becauses).isNotEmpty().allMatch(id -> id.startsWith("pad.d/"));
        assertThat(after.order()).isEqualTo(before.order());
        assertThat(after.cuts()).isEqualTo(before.cuts());
        assertThat(after.missing()).isEqualTo(before.missing());
        assertThat(after.warnings()).isEqualTo(before.warnings());
    }

    @Test
    void a_planner_kept_for_a_job_answers_one_chapter_again() {
        Planner planner = new Planner();
        planner.replan(job);
        long first = planner.reckoned();
        assertThat(planner.replan(job)).isEqualTo(Planner.plan(job));
        assertThat(planner.reckoned()).isEqualTo(first);
        PlanInputs changed = deeper(job, "cup.d");
        assertThat(planner.replan(changed)).isEqualTo(Planner.plan(changed));
        assertThat(planner.reckoned()).isEqualTo(first + 1);
    }

    private static PlanInputs deeper(PlanInputs job, String cup) {
        List<Reading> changed = job.readings().stream()
                .map(reading ->
                        reading.kind() == ReadingKind.CUP_DEPTH && reading.of().equals(cup) ? deeper(reading) : reading)
                .toList();
        assertThat(changed).isNotEqualTo(job.readings());
        return job.withReadings(changed);
    }

    private static Reading deeper(Reading reading) {
        Observed.Amount depth = (Observed.Amount) reading.observed();
        return new Reading(
                reading.id(),
                reading.kind(),
                reading.of(),
                reading.point(),
                new Observed.Amount(depth.value() + 0.1, depth.unit(), depth.u()),
                reading.instrument(),
                reading.raw(),
                reading.who(),
                reading.when(),
                reading.stage(),
                reading.series());
    }
}
