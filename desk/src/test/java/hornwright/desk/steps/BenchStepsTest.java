package hornwright.desk.steps;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.bench.steps.BenchSteps;
import hornwright.bench.steps.Disturbances;
import hornwright.bench.steps.Progress;
import hornwright.bench.steps.Step;
import hornwright.bench.steps.StepState;
import hornwright.bench.steps.WorkEvent;
import hornwright.bench.steps.WorkGraph;
import hornwright.bench.survey.WorkDone;
import hornwright.bench.survey.WorkKind;
import hornwright.desk.keyworkfile.KeyworkFile;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BenchStepsTest {
    private final WorkGraph alto =
            BenchSteps.of(KeyworkFile.shipped("tarrant-loe-alto").orElseThrow());

    @ParameterizedTest
    @ValueSource(strings = {"tarrant-loe-alto", "tarrant-loe-tenor"})
    void every_horn_has_steps_for_each_cup_key_and_link(String name) {
        var keywork = KeyworkFile.shipped(name).orElseThrow();
        List<String> ids = BenchSteps.of(keywork).steps().stream().map(Step::id).toList();
        keywork.cups()
                .forEach(cup ->
                        assertThat(ids).contains("level." + cup.hole(), "arm." + cup.hole(), "pad." + cup.hole()));
        keywork.keys().forEach(key -> assertThat(ids).contains("fit." + key.id(), "spring." + key.id()));
        assertThat(ids.stream().filter(id -> id.startsWith("regulate.")))
                .hasSize(keywork.links().size());
    }

    @Test
    void a_bent_f_sharp_arm_asks_for_its_seat_height_and_links_and_leaves_the_c_vent_alone() {
        Progress progress = finishedThen(new WorkDone("w1", WorkKind.ARM_BENT, "f-sharp", null), "F♯");
        assertThat(rechecks(progress))
                .containsExactlyInAnyOrder(
                        "arm.f-sharp",
                        "pad.f-sharp",
                        "height.f-sharp",
                        "regulate.d-to-f-sharp",
                        "regulate.e-to-f-sharp",
                        "regulate.f-to-f-sharp",
                        "regulate.f-sharp-to-bis",
                        "regulate.f-sharp-to-g-sharp",
                        "second.pads",
                        "second.heights",
                        "second.regulate");
        assertThat(progress.of("regulate.b-to-c-vent")).isEqualTo(new StepState.Good());
        assertThat(progress.of("regulate.f-sharp-to-bis"))
                .isInstanceOfSatisfying(
                        StepState.Recheck.class,
                        recheck -> assertThat(recheck.why()).isEqualTo("F♯: arm bent"));
    }

    @Test
    void a_changed_foot_asks_for_the_height_and_its_links_but_not_for_the_pad() {
        Progress progress = finishedThen(new WorkDone("w1", WorkKind.FOOT_CHANGED, "a", null), "A foot");
        assertThat(rechecks(progress))
                .contains("cork.foot.a", "height.a", "regulate.a-to-bis", "regulate.a-to-c-vent")
                .doesNotContain("pad.a", "arm.a", "height.g");
    }

    @Test
    void a_pad_found_right_again_lets_its_dependants_stand() {
        List<WorkEvent> events = finished();
        events.add(new WorkEvent.Disturbed("arm.f-sharp", "looked at"));
        events.add(new WorkEvent.SignedOff("arm.f-sharp", false));
        events.add(new WorkEvent.SignedOff("pad.f-sharp", false));
        Progress progress = Progress.after(alto, events);
        assertThat(progress.of("height.f-sharp")).isEqualTo(new StepState.Good());
        assertThat(progress.of("regulate.d-to-f-sharp")).isEqualTo(new StepState.Good());
    }

    private Progress finishedThen(WorkDone work, String name) {
        List<WorkEvent> events = finished();
        events.add(new Disturbances(alto).of(work, name).orElseThrow());
        return Progress.after(alto, events);
    }

    private List<WorkEvent> finished() {
        List<WorkEvent> events = new ArrayList<>();
        alto.steps().forEach(step -> events.add(new WorkEvent.SignedOff(step.id(), true)));
        return events;
    }

    private static List<String> rechecks(Progress progress) {
        return progress.all().entrySet().stream()
                .filter(entry -> entry.getValue() instanceof StepState.Recheck)
                .map(java.util.Map.Entry::getKey)
                .toList();
    }
}
