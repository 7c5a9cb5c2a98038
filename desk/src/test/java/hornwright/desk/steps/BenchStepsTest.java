package hornwright.desk.steps;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.bench.horn.Key;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Rod;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.steps.BenchSteps;
import hornwright.bench.steps.Disturbances;
import hornwright.bench.steps.Progress;
import hornwright.bench.steps.Rest;
import hornwright.bench.steps.RodOrder;
import hornwright.bench.steps.Step;
import hornwright.bench.steps.StepState;
import hornwright.bench.steps.StepsAsked;
import hornwright.bench.steps.Tray;
import hornwright.bench.steps.WorkEvent;
import hornwright.bench.steps.WorkGraph;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.PinAccess;
import hornwright.bench.survey.PinChoice;
import hornwright.bench.survey.PinSort;
import hornwright.bench.survey.PlayGrade;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.Stage;
import hornwright.bench.survey.Treatment;
import hornwright.bench.survey.WorkDone;
import hornwright.bench.survey.WorkKind;
import hornwright.desk.keyworkfile.KeyworkFile;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BenchStepsTest {
    private final WorkGraph alto =
            BenchSteps.of(StepsAsked.of(KeyworkFile.shipped("tarrant-loe-alto").orElseThrow()));

    @ParameterizedTest
    @ValueSource(strings = {"tarrant-loe-alto", "tarrant-loe-tenor"})
    void every_horn_has_steps_for_each_cup_key_and_link(String name) {
        var keywork = KeyworkFile.shipped(name).orElseThrow();
        List<String> ids = BenchSteps.of(StepsAsked.of(keywork)).steps().stream()
                .map(Step::id)
                .toList();
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

    @Test
    void what_stays_is_not_cut_anew_and_a_chosen_rim_says_what_is_done() {
        Keywork keywork = KeyworkFile.shipped("tarrant-loe-alto").orElseThrow();
        WorkGraph steps = BenchSteps.of(new StepsAsked(
                keywork,
                Map.of("pad.d", Treatment.KEEP, "foot.d", Treatment.KEEP, "spring.d", Treatment.MAKE),
                List.of(said(ReadingKind.RIM_CHECK, "d", "choice", "leave")),
                ShopRules.shipped()));
        assertThat(steps.get("pad.d").words()).isEqualTo("Seat the D pad that stays");
        assertThat(steps.get("cork.foot.d").words()).startsWith("Keep ");
        assertThat(steps.get("spring.d").words()).startsWith("Fit a new spring to D");
        assertThat(steps.get("level.d").words()).startsWith("Leave the D rim");
        assertThat(steps.get("pad.e").words()).isEqualTo("Set and float the E pad");
    }

    @Test
    void a_dent_found_on_the_bow_is_a_step_before_posts_and_a_dent_raised_again_asks_for_every_fit() {
        Observed.Pin dent = new Observed.Pin(PinSort.DENT, 800, 20, 14, null, PinAccess.INSIDE, PinChoice.MEND);
        WorkGraph steps = BenchSteps.of(asked(Reading.of("r.1", ReadingKind.PIN, "pin.1", dent)));
        assertThat(steps.get("body.1").words()).isEqualTo("Raise the dent on the bow, 14 mm");
        assertThat(steps.allRestingOn("body.1")).contains("dents", "posts", "fit.d", "level.d", "pad.d");
        assertThat(steps.allRestingOn("body.1")).doesNotContain("neck", "spring.d");
    }

    @Test
    void the_rods_drawn_to_reach_a_key_are_all_needed_and_in_order() {
        Keywork keywork = KeyworkFile.shipped("tarrant-loe-alto").orElseThrow();
        RodOrder order = new RodOrder(keywork);
        for (Key key : keywork.keys()) {
            List<Rod> drawn = order.toReach(key);
            assertThat(drawn.getLast().id()).isEqualTo(key.rod());
            List<String> off = new ArrayList<>();
            for (Rod rod : drawn) {
                assertThat(off).containsAll(rod.removeAfter());
                off.add(rod.id());
            }
            for (Rod rod : drawn.subList(0, drawn.size() - 1)) {
                assertThat(drawn.stream().anyMatch(other -> other.removeAfter().contains(rod.id())))
                        .isTrue();
            }
        }
        assertThat(order.toReach(keywork.keys().get("d"))).extracting(Rod::id).containsExactly("rod.lower-stack");
        assertThat(order.on()).isEqualTo(order.off().reversed());
    }

    @Test
    void every_rod_lies_in_one_bag_of_one_tray() {
        Keywork keywork = KeyworkFile.shipped("tarrant-loe-alto").orElseThrow();
        List<Tray.Bag> bags =
                Tray.of(keywork).stream().flatMap(tray -> tray.bags().stream()).toList();
        assertThat(bags)
                .extracting(bag -> bag.rod().id())
                .doesNotHaveDuplicates()
                .hasSize(keywork.rods().size());
        assertThat(bags.stream().mapToInt(bag -> bag.keys().size()).sum())
                .isEqualTo(keywork.keys().size());
    }

    @Test
    void the_rest_begins_with_the_last_step_before_it_and_ends_with_its_own() {
        Instant noon = Instant.parse("2026-11-25T12:00:00Z");
        List<WorkDone> done = List.of(new WorkDone("w1", WorkKind.SIGNED_OFF, "touch", noon));
        List<WorkEvent> events = new ArrayList<>();
        alto.steps().stream()
                .takeWhile(step -> !step.id().equals("rest"))
                .forEach(step -> events.add(new WorkEvent.SignedOff(step.id(), true)));
        Rest rest = Rest.of(Progress.after(alto, events).all(), done, Duration.ofHours(24), Duration.ofHours(72))
                .orElseThrow();
        assertThat(rest.tooEarly(noon.plus(Duration.ofHours(23)))).isTrue();
        assertThat(rest.tooEarly(noon.plus(Duration.ofHours(25)))).isFalse();
        assertThat(rest.overdue(noon.plus(Duration.ofHours(73)))).isTrue();
        events.add(new WorkEvent.SignedOff("rest", true));
        assertThat(Rest.of(Progress.after(alto, events).all(), done, Duration.ofHours(24), Duration.ofHours(72)))
                .isEmpty();
    }

    @Test
    void what_was_found_to_need_nothing_is_no_step_and_comes_back_as_one_when_it_reads_worse() {
        Reading none = Reading.of("r.1", ReadingKind.PLAY, "d", new Observed.Play(PlayGrade.NONE, PlayGrade.NONE));
        Reading level = Reading.of("r.2", ReadingKind.RIM_GAP, "d", new Observed.RimGap(0.03, 0.01, 4));
        WorkGraph spared = BenchSteps.of(asked(none, level));
        assertThat(spared.contains("fit.d")).isFalse();
        assertThat(spared.contains("level.d")).isFalse();
        assertThat(spared.steps()).hasSize(alto.steps().size() - 2);
        assertThat(spared.get("pad.d").restsOn()).contains("arm.d", "cup.d").doesNotContain("fit.d", "level.d");
        Reading worn = Reading.of("r.3", ReadingKind.HINGE, "d", Observed.Amount.mm(0.08));
        Reading across = new Reading(
                "r.3",
                ReadingKind.HINGE,
                "d",
                "across the rod",
                worn.observed(),
                "",
                "",
                "",
                null,
                Stage.ARRIVAL,
                null);
        Reading bent = Reading.of("r.4", ReadingKind.RIM_GAP, "d", new Observed.RimGap(0.12, 0.01, 4));
        WorkGraph again = BenchSteps.of(asked(none, level, across, bent));
        assertThat(again.steps()).extracting(Step::id).contains("fit.d", "level.d");
    }

    @Test
    void a_rim_that_was_read_level_but_chosen_for_work_or_filed_keeps_its_step() {
        Reading level = Reading.of("r.2", ReadingKind.RIM_GAP, "d", new Observed.RimGap(0.03, 0.01, 4));
        Reading filed = Reading.of("r.3", ReadingKind.METAL_OFF, "d", Observed.Amount.mm(0.05));
        assertThat(BenchSteps.of(asked(level, said(ReadingKind.RIM_CHECK, "d", "choice", "lift")))
                        .contains("level.d"))
                .isTrue();
        assertThat(BenchSteps.of(asked(level, filed)).contains("level.d")).isTrue();
    }

    @Test
    void a_leaking_ring_adds_a_step_before_its_rim_is_levelled() {
        WorkGraph steps = BenchSteps.of(asked(said(ReadingKind.RIM_CHECK, "low-b", "ring", "leaks")));
        assertThat(steps.get("level.low-b").restsOn()).contains("ring.low-b");
        assertThat(steps.get("ring.low-b").words()).startsWith("Solder the ring of the low B hole");
        assertThat(steps.steps()).hasSize(alto.steps().size() + 1);
    }

    @Test
    void nothing_rests_on_a_dent_that_is_left() {
        Observed.Pin dent = new Observed.Pin(PinSort.DENT, 800, 20, 14, null, PinAccess.INSIDE, PinChoice.LEAVE);
        WorkGraph steps = BenchSteps.of(asked(Reading.of("r.1", ReadingKind.PIN, "pin.1", dent)));
        assertThat(steps.get("body.1").words()).startsWith("Leave, and write into the report,");
        assertThat(steps.allRestingOn("body.1")).isEmpty();
    }

    @Test
    void a_sound_spring_that_stays_is_no_step() {
        Keywork keywork = KeyworkFile.shipped("tarrant-loe-alto").orElseThrow();
        WorkGraph steps = BenchSteps.of(
                new StepsAsked(keywork, Map.of("spring.d", Treatment.KEEP), List.of(), ShopRules.shipped()));
        assertThat(steps.contains("spring.d")).isFalse();
        assertThat(steps.contains("spring.e")).isTrue();
    }

    private static StepsAsked asked(Reading... readings) {
        Keywork keywork = KeyworkFile.shipped("tarrant-loe-alto").orElseThrow();
        return new StepsAsked(keywork, Map.of(), List.of(readings), ShopRules.shipped());
    }

    private static Reading said(ReadingKind kind, String of, String point, String word) {
        return new Reading("r.x", kind, of, point, new Observed.Says(word), "eye", "", "", null, Stage.ARRIVAL, null);
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
