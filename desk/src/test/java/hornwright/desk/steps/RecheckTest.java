package hornwright.desk.steps;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.PlaceKind;
import hornwright.bench.job.Arrival;
import hornwright.bench.job.Decided;
import hornwright.bench.job.DecisionDropped;
import hornwright.bench.job.History;
import hornwright.bench.job.Identity;
import hornwright.bench.job.Job;
import hornwright.bench.job.JobEdit;
import hornwright.bench.job.JobFold;
import hornwright.bench.job.JobOpened;
import hornwright.bench.job.Posted;
import hornwright.bench.job.ReadingTaken;
import hornwright.bench.job.ReadingWithdrawn;
import hornwright.bench.job.StageReached;
import hornwright.bench.job.Undone;
import hornwright.bench.job.WorkRecorded;
import hornwright.bench.plan.PlannedStep;
import hornwright.bench.plan.order.OrderChapter;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.steps.BenchSteps;
import hornwright.bench.steps.StepState;
import hornwright.bench.steps.StepsAsked;
import hornwright.bench.steps.WorkGraph;
import hornwright.bench.survey.Decision;
import hornwright.bench.survey.NeckCheck;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.PadClass;
import hornwright.bench.survey.PlayGrade;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.Stage;
import hornwright.bench.survey.Treatment;
import hornwright.bench.survey.Unit;
import hornwright.bench.survey.WorkDone;
import hornwright.bench.survey.WorkKind;
import hornwright.desk.keyworkfile.KeyworkFile;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A decision or a measurement after the signature brings back what was made to suit the former one, and nothing else. */
final class RecheckTest {
    private static final Instant AT = Instant.parse("2026-03-02T09:00:00Z");
    private static final Keywork ALTO = KeyworkFile.shipped("tarrant-loe-alto").orElseThrow();
    private static final WorkGraph GRAPH = BenchSteps.of(StepsAsked.of(ALTO));
    private static final JobEdit SIGNED = new StageReached(Stage.RESTED);

    @Test
    void a_height_accepted_after_all_is_signed_turns_foot_height_and_regulation_of_its_key_and_nothing_else() {
        Map<String, StepState> states = states(SIGNED, height("cup.g", 5.3));
        assertThat(rechecks(states)).isEqualTo(withAllRestingOn("cork.foot.g"));
        assertThat(rechecks(states)).contains("height.g").anyMatch(step -> step.startsWith("regulate."));
        assertThat(rechecks(states)).noneMatch(step -> step.startsWith("pad."));
        assertThat(states.values().stream().filter(state -> !(state instanceof StepState.Recheck)))
                .allMatch(StepState.Good.class::isInstance);
        assertThat(states.get("cork.foot.g"))
                .isEqualTo(new StepState.Recheck("height of G accepted at 5.3 mm", List.of()));
        assertThat(states.get("height.g"))
                .isEqualTo(new StepState.Recheck("height of G accepted at 5.3 mm", List.of("cork.foot.g")));
    }

    @Test
    void undoing_the_decision_or_taking_it_back_turns_them_good_again() {
        assertThat(rechecks(states(SIGNED, height("cup.g", 5.3), new Undone(3))))
                .isEmpty();
        assertThat(rechecks(states(SIGNED, height("cup.g", 5.3), new DecisionDropped("height.cup.g"))))
                .isEmpty();
    }

    @Test
    void a_decision_that_was_worked_to_and_is_then_taken_back_asks_for_the_foot_again() {
        Map<String, StepState> states = states(height("cup.g", 5.3), SIGNED, new DecisionDropped("height.cup.g"));
        assertThat(states.get("cork.foot.g"))
                .isEqualTo(new StepState.Recheck("height of G: decision taken back", List.of()));
    }

    @Test
    void what_was_decided_before_the_signature_or_is_decided_the_same_again_asks_for_nothing() {
        assertThat(rechecks(states(height("cup.g", 5.3), SIGNED))).isEmpty();
        assertThat(rechecks(states(height("cup.g", 5.3), SIGNED, height("cup.g", 5.3))))
                .isEmpty();
        assertThat(rechecks(states(height("cup.g", 5.3), SIGNED, height("cup.g", 5.5), height("cup.g", 5.3))))
                .isEmpty();
    }

    @Test
    void each_kind_of_decision_brings_back_the_step_that_makes_it() {
        onlyFrom("pad.g", new Decision.PadThickness("cup.g", 4.1, "trial"));
        onlyFrom("pad.g", new Decision.PadSoftness("cup.g", PadClass.SOFT, "trial"));
        onlyFrom("pad.g", new Decision.Treat("pad.g", Treatment.REPLACE_LIKE, null, "owner asked"));
        onlyFrom("cork.foot.g", new Decision.Treat("foot.g", Treatment.REPLACE_LIKE, null, "owner asked"));
        onlyFrom("regulate.d-to-f-sharp", new Decision.Contact("link.d-to-f-sharp", -0.08, "leaf"));
    }

    @Test
    void a_cup_measured_again_brings_back_its_pad_only_when_it_differs_by_more_than_both_readings_doubt() {
        JobEdit first = inside("r.1", 32.8);
        Map<String, StepState> states = states(first, SIGNED, inside("r.2", 33.1));
        assertThat(rechecks(states)).isEqualTo(withAllRestingOn("pad.low-e-flat"));
        assertThat(states.get("pad.low-e-flat"))
                .isEqualTo(new StepState.Recheck("cup of low E♭ measured again: 33.1 mm, was 32.8 mm", List.of()));
        assertThat(rechecks(states(first, SIGNED, inside("r.2", 32.85)))).isEmpty();
        assertThat(rechecks(states(first, inside("r.2", 33.1), SIGNED))).isEmpty();
        assertThat(rechecks(states(SIGNED, first))).isEmpty();
        assertThat(rechecks(states(first, SIGNED, inside("r.2", 38.2), new ReadingWithdrawn("r.2", "misread"))))
                .isEmpty();
    }

    @Test
    void a_reading_that_is_the_result_of_a_step_brings_nothing_back() {
        JobEdit before =
                new ReadingTaken(Reading.of("r.1", ReadingKind.FRONT_HEIGHT, "cup.g", Observed.Amount.mm(6.0, 0.05)));
        JobEdit after =
                new ReadingTaken(Reading.of("r.2", ReadingKind.FRONT_HEIGHT, "cup.g", Observed.Amount.mm(5.3, 0.05)));
        assertThat(rechecks(states(before, SIGNED, after))).isEmpty();
    }

    @Test
    void reaching_a_stage_signs_off_what_was_disturbed_before_it_and_leaves_the_later_to_be_looked_at() {
        JobEdit bent = new WorkRecorded(new WorkDone("w.1", WorkKind.ARM_BENT, "g", null));
        Map<String, StepState> states = states(SIGNED, bent, SIGNED);
        assertThat(rechecks(states)).isEmpty();
        assertThat(rechecks(states(SIGNED, height("cup.g", 5.3), SIGNED))).isEmpty();
        assertThat(rechecks(states(SIGNED, SIGNED, bent))).isEqualTo(withAllRestingOn("arm.g"));
        assertThat(states(SIGNED, new StageReached(Stage.CORKED)).get("pad.g")).isInstanceOf(StepState.Ready.class);
    }

    @Test
    void a_rim_that_reads_worse_after_it_was_signed_brings_back_its_hole_and_all_that_rests_on_it() {
        Map<String, StepState> states = states(gap("r.1", 0.02), SIGNED, gap("r.2", 0.14));
        assertThat(rechecks(states)).isEqualTo(withAllRestingOn("level.d"));
        assertThat(rechecks(states)).contains("pad.d", "height.d").doesNotContain("pad.e", "level.e");
        assertThat(states.get("level.d"))
                .isEqualTo(new StepState.Recheck("worst rim gap of D reads 0.14 mm at 4.0 o'clock", List.of()));
        assertThat(rechecks(states(gap("r.1", 0.14), SIGNED, gap("r.2", 0.02)))).isEmpty();
        assertThat(rechecks(states(SIGNED, gap("r.1", 0.06)))).isEmpty();
    }

    @Test
    void a_rim_found_right_as_it_is_or_left_by_choice_is_asked_again_only_when_it_gets_worse_still() {
        JobEdit found = new WorkRecorded(new WorkDone("w.1", WorkKind.FOUND_RIGHT, "level.d", null));
        assertThat(states(SIGNED, gap("r.1", 0.14), found, gap("r.2", 0.15)).get("level.d"))
                .isEqualTo(new StepState.Good());
        assertThat(states(SIGNED, gap("r.1", 0.14), found, gap("r.2", 0.25)).get("level.d"))
                .isEqualTo(new StepState.Recheck(
                        "worst rim gap of D measured again: 0.25 mm at 4.0 o'clock, was 0.14 mm at 4.0 o'clock",
                        List.of()));
        JobEdit level = new WorkRecorded(new WorkDone("w.2", WorkKind.SIGNED_OFF, "level.d", null));
        JobEdit fitted = new StageReached(Stage.KEYS_FITTED);
        assertThat(states(fitted, choice("leave"), gap("r.1", 0.14), level, gap("r.2", 0.15))
                        .get("level.d"))
                .isEqualTo(new StepState.Good());
        assertThat(states(fitted, choice("lift"), gap("r.1", 0.14), level, gap("r.2", 0.14))
                        .get("level.d"))
                .isInstanceOf(StepState.Recheck.class);
    }

    @Test
    void every_sheet_brings_back_its_own_step_by_what_it_reads_worse() {
        onlyAfter("fit.d", reading(ReadingKind.PLAY, "d", "", new Observed.Play(PlayGrade.CLEAR, PlayGrade.NONE)));
        onlyAfter("fit.d", reading(ReadingKind.HINGE, "d", "across the rod", Observed.Amount.mm(0.12, 0.01)));
        onlyAfter("neck", reading(ReadingKind.NECK_CHECK, "neck", "slides", new Observed.Says("rocks")));
        onlyAfter("neck", reading(ReadingKind.LEAK_SITE, site(PlaceKind.TENON), "", new Observed.Says("leaks")));
        onlyAfter("solder", reading(ReadingKind.LEAK_SITE, site(PlaceKind.BRACE), "", new Observed.Says("leaks")));
        onlyAfter("pad.e", reading(ReadingKind.LEAK_SITE, "pad.e", "", new Observed.Says("leaks")));
        onlyAfter(
                "octave",
                reading(ReadingKind.NECK_CHECK, "neck", NeckCheck.TURNED.point(), new Observed.Says("opens the vent")));
        String tab = ALTO.lowTable().gSharpTabs().getFirst().link();
        onlyAfter(
                "regulate." + tab.replace("link.", ""),
                reading(ReadingKind.CLEARANCE, tab, "at rest", Observed.Amount.mm(0.9, 0.02)));
        onlyAfter("arm.d", reading(ReadingKind.METAL_OFF, "d", "in all", Observed.Amount.mm(0.08, 0.01)));
        onlyAfter(
                "second.pads",
                reading(ReadingKind.LEAK, "horn", "", new Observed.Amount(9, Unit.MILLILITRES_PER_SECOND, 0.5)));
    }

    @Test
    void the_same_sheets_ask_for_nothing_while_they_read_as_they_should() {
        for (JobEdit good : List.of(
                reading(ReadingKind.PLAY, "d", "", new Observed.Play(PlayGrade.NONE, PlayGrade.JUST_FELT)),
                reading(ReadingKind.NECK_CHECK, "neck", "slides", new Observed.Says("without rock")),
                reading(ReadingKind.LEAK_SITE, "pad.e", "", new Observed.Says("seals")),
                reading(ReadingKind.TOUCH_WEIGHT, "d", "", new Observed.Amount(0.5, Unit.NEWTON, 0.02)),
                reading(ReadingKind.METAL_OFF, "d", "in all", Observed.Amount.mm(0, 0.01)))) {
            assertThat(rechecks(states(SIGNED, good))).isEmpty();
        }
    }

    private static void onlyAfter(String step, JobEdit read) {
        assertThat(rechecks(states(SIGNED, read))).isEqualTo(withAllRestingOn(step));
    }

    private static String site(PlaceKind kind) {
        return ALTO.places().stream()
                .filter(place -> place.kind() == kind)
                .findFirst()
                .orElseThrow()
                .id();
    }

    private static JobEdit gap(String id, double mm) {
        return new ReadingTaken(new Reading(
                id,
                ReadingKind.RIM_GAP,
                "d",
                "",
                new Observed.RimGap(mm, 0.01, 4),
                "feeler",
                "",
                "",
                null,
                Stage.RESTED,
                null));
    }

    private static JobEdit choice(String word) {
        return reading(ReadingKind.RIM_CHECK, "d", "choice", new Observed.Says(word));
    }

    private static JobEdit reading(ReadingKind kind, String of, String point, Observed observed) {
        return new ReadingTaken(new Reading(
                "r." + kind + of + point, kind, of, point, observed, "eye", "", "", null, Stage.RESTED, null));
    }

    /** The bench as it truly is, found from the whole log at once, step by step and from the definition. */
    @Test
    void after_any_course_exactly_what_was_signed_on_something_else_is_asked_again() {
        Random random = new Random(11);
        int asked = 0;
        for (int round = 0; round < 60; round++) {
            List<JobEdit> edits = new ArrayList<>(List.of(SIGNED));
            for (int act = 0; act < 25; act++) {
                edits.add(anything(random, act));
            }
            Log log = new Log(edits);
            Map<String, StepState> states = states(edits.toArray(JobEdit[]::new));
            Map<String, Boolean> good = new HashMap<>();
            GRAPH.steps().forEach(step -> {
                boolean soundBelow = step.restsOn().stream().allMatch(below -> good.getOrDefault(below, false));
                good.put(step.id(), soundBelow && log.isSignedOnWhatIs(step.id(), step.restsOn()));
            });
            states.forEach((step, state) ->
                    assertThat(state instanceof StepState.Good).as(step).isEqualTo(good.get(step)));
            asked += rechecks(states).size();
        }
        assertThat(asked).isPositive();
    }

    private static JobEdit anything(Random random, int act) {
        String hole = List.of("g", "a", "d").get(random.nextInt(3));
        String step =
                List.of("cork.foot." + hole, "pad." + hole, "height." + hole).get(random.nextInt(3));
        return switch (random.nextInt(6)) {
            case 0, 1 -> height("cup." + hole, 5 + random.nextInt(3));
            case 2 -> new DecisionDropped("height.cup." + hole);
            case 3 -> new WorkRecorded(new WorkDone("w." + act, WorkKind.FOUND_RIGHT, step, null));
            case 4 -> new WorkRecorded(new WorkDone("w." + act, WorkKind.SIGNED_OFF, step, null));
            default ->
                random.nextInt(6) == 0
                        ? new StageReached(Stage.RESTED)
                        : new WorkRecorded(new WorkDone("w." + act, WorkKind.ARM_BENT, hole, null));
        };
    }

    /** Reads the whole log for every question. */
    private record Log(List<JobEdit> edits) {
        boolean isSignedOnWhatIs(String step, List<String> below) {
            int signed = lastSigned(step, edits.size());
            return Stream.concat(Stream.of(step), below.stream()).noneMatch(each -> changedAfter(each, signed));
        }

        private boolean changedAfter(String step, int signed) {
            for (int i = signed + 1; i < edits.size(); i++) {
                boolean worked = changesResult(edits.get(i), step);
                if (worked || wantsOtherwiseFrom(i, step)) {
                    return true;
                }
            }
            return false;
        }

        /** Whether the decision at i is the last before the step is signed, and differs from that it was signed on. */
        private boolean wantsOtherwiseFrom(int i, String step) {
            if (!step.startsWith("cork.foot.") || !touches(edits.get(i), step)) {
                return false;
            }
            int next = i + 1;
            while (next < edits.size() && !signs(edits.get(next), step)) {
                if (touches(edits.get(next), step) && !wanted(step, next).equals(wanted(step, next + 1))) {
                    return false;
                }
                next++;
            }
            return !wanted(step, i + 1).equals(wanted(step, lastSigned(step, i)))
                    && !wanted(step, i).equals(wanted(step, i + 1));
        }

        private int lastSigned(String step, int before) {
            int last = before - 1;
            while (!signs(edits.get(last), step)) {
                last--;
            }
            return last;
        }

        private static boolean changesResult(JobEdit edit, String step) {
            return edit instanceof WorkRecorded(WorkDone work)
                    && switch (work.kind()) {
                        case SIGNED_OFF -> work.of().equals(step);
                        case ARM_BENT -> step.equals("arm." + work.of());
                        default -> false;
                    };
        }

        private static boolean signs(JobEdit edit, String step) {
            return switch (edit) {
                case StageReached reached -> true;
                case WorkRecorded(WorkDone work) -> work.of().equals(step) && work.kind() != WorkKind.ARM_BENT;
                default -> false;
            };
        }

        private static boolean touches(JobEdit edit, String step) {
            String about = "height.cup." + step.replace("cork.foot.", "");
            return switch (edit) {
                case Decided decided -> decided.decision().about().equals(about);
                case DecisionDropped dropped -> dropped.about().equals(about);
                default -> false;
            };
        }

        private String wanted(String step, int before) {
            String wanted = "";
            for (JobEdit edit : edits.subList(0, before)) {
                if (touches(edit, step)) {
                    wanted =
                            edit instanceof Decided decided ? decided.decision().inWords() : "";
                }
            }
            return wanted;
        }
    }

    private static void onlyFrom(String step, Decision decision) {
        assertThat(rechecks(states(SIGNED, new Decided(decision)))).isEqualTo(withAllRestingOn(step));
    }

    private static Set<String> withAllRestingOn(String step) {
        Set<String> all = new TreeSet<>(GRAPH.allRestingOn(step));
        all.add(step);
        return all;
    }

    private static Set<String> rechecks(Map<String, StepState> states) {
        return states.entrySet().stream()
                .filter(entry -> entry.getValue() instanceof StepState.Recheck)
                .map(Map.Entry::getKey)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static JobEdit height(String cup, double mm) {
        return new Decided(new Decision.Height(cup, mm, "accepted"));
    }

    private static JobEdit inside(String id, double mm) {
        return new ReadingTaken(Reading.of(id, ReadingKind.CUP_INSIDE, "cup.low-e-flat", Observed.Amount.mm(mm, 0.05)));
    }

    private static Map<String, StepState> states(JobEdit... edits) {
        Job job = job(edits);
        OrderChapter order = OrderChapter.of(new OrderChapter.Question(
                StepsAsked.of(ALTO), job.stage(), job.work(), job.chronicle(), ShopRules.shipped()));
        return order.steps().stream()
                .collect(Collectors.toMap(planned -> planned.step().id(), PlannedStep::state));
    }

    /** The clock stands still: only the order of writing down counts. */
    private static Job job(JobEdit... edits) {
        List<Posted> posted = new ArrayList<>();
        Identity identity = new Identity("tarrant-loe-alto", "Tarrant & Loe", ALTO.voice(), 41207L, ALTO.switches());
        posted.add(new Posted(1, AT, "p-1", new JobOpened(identity, new Arrival("p-2", "low notes gurgle"))));
        Stream.of(edits).forEach(edit -> posted.add(new Posted(posted.size() + 1, AT, "p-1", edit)));
        return History.of(new JobFold("q-0007"), posted).state().orElseThrow();
    }
}
