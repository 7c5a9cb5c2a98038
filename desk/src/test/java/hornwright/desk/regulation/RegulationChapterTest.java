package hornwright.desk.regulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.bench.horn.Keywork;
import hornwright.bench.plan.Because;
import hornwright.bench.plan.CutLine;
import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.Plan;
import hornwright.bench.plan.PlanInputs;
import hornwright.bench.plan.PlannedLink;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Planner;
import hornwright.bench.plan.measured.Measurements;
import hornwright.bench.plan.regulation.LinksAnswer;
import hornwright.bench.plan.regulation.LinksAnswer.SpotLine;
import hornwright.bench.plan.regulation.RegulationChapter;
import hornwright.bench.plan.regulation.YieldAnswer;
import hornwright.bench.plan.regulation.YieldChapter;
import hornwright.bench.regulation.Correction;
import hornwright.bench.regulation.Feeler;
import hornwright.bench.regulation.Watch;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.survey.Decision;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.Stage;
import hornwright.bench.survey.WorkDone;
import hornwright.bench.survey.WorkKind;
import hornwright.desk.keyworkfile.KeyworkFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;

class RegulationChapterTest {
    private static final Keywork ALTO = KeyworkFile.shipped("tarrant-loe-alto").orElseThrow();
    private static final ShopRules RULES = ShopRules.shipped();
    private static final VirtualBench WRONG = VirtualBench.asBuilt(ALTO)
            .wrongBy("link.d-to-f-sharp", 0.14)
            .wrongBy("link.f-sharp-to-bis", -0.12)
            .wrongBy("link.a-to-c-vent", 0.09);

    private static List<Reading> felt(VirtualBench bench) {
        List<Reading> readings = new ArrayList<>();
        for (Feeler feeler : bench.felt(0, 0, new Random(0))) {
            ReadingKind kind =
                    bench.keywork().cups().contains(feeler.at()) ? ReadingKind.LINKED_GAP : ReadingKind.CONTACT_GAP;
            readings.add(new Reading(
                    "r." + readings.size(),
                    kind,
                    feeler.at(),
                    "pressing " + feeler.press(),
                    Observed.Amount.mm(feeler.gapMm()),
                    kind.usualInstrument(),
                    "",
                    "",
                    null,
                    Stage.HEIGHTS_SET,
                    null));
        }
        return readings;
    }

    private static LinksAnswer answer(List<Reading> readings) {
        return RegulationChapter.of(new RegulationChapter.Question(ALTO, readings, RULES));
    }

    /** Second method: the whole mechanism, one press at a time, with every contact as found and then altered as printed. */
    @Test
    void each_gap_that_is_printed_equals_a_run_of_the_engine_with_the_printed_changes() {
        LinksAnswer answer = answer(felt(WRONG));
        VirtualBench altered = VirtualBench.asBuilt(ALTO);
        for (PlannedLink line : answer.contacts()) {
            PlannedNumber error = Objects.requireNonNull(line.error());
            PlannedNumber change = line.change();
            altered = altered.wrongBy(line.link(), error.value() + (change == null ? 0 : change.value()));
        }
        double times = RULES.value("regulation.force-times");
        for (SpotLine spot : answer.spots()) {
            PlannedNumber expected = spot.expected();
            if (expected != null) {
                assertThat(expected.value())
                        .as(spot.watch().toString())
                        .isCloseTo(altered.gapMm(spot.watch(), times), within(1e-6));
            }
        }
        assertThat(answer.spots()).filteredOn(spot -> spot.expected() != null).hasSize(22);
    }

    @Test
    void what_was_wrong_is_found_and_what_is_done_shuts_every_cup() {
        LinksAnswer answer = answer(felt(WRONG));
        assertThat(answer.toDo())
                .extracting(PlannedLink::link)
                .contains("link.d-to-f-sharp", "link.f-sharp-to-bis", "link.a-to-c-vent");
        assertThat(answer.spots()).allSatisfy(spot -> {
            if (spot.expected() != null) {
                assertThat(spot.expected().value()).isLessThan(RULES.value("regulation.closed_mm"));
            }
        });
        assertThat(answer.contact("link.d-to-f-sharp").orElseThrow().pulls())
                .satisfies(pulls ->
                        assertThat(Objects.requireNonNull(pulls).value()).isBetween(3.0, 5.0));
    }

    /** The terms of a because and the number agree: what follows each reading adds up to the printed ±. */
    @Test
    void every_number_rests_on_readings_rules_or_judgement_and_its_terms_make_its_doubt() {
        LinksAnswer answer = answer(felt(WRONG));
        for (PlannedLink line : answer.contacts()) {
            PlannedNumber error = Objects.requireNonNull(line.error());
            assertThat(error.u()).isPositive();
            assertThat(answer.becauses().leaves(error.because()))
                    .anyMatch(Because.FromReading.class::isInstance)
                    .anyMatch(Because.FromRule.class::isInstance);
        }
    }

    @Test
    void before_anybody_has_felt_there_are_no_numbers() {
        LinksAnswer answer = answer(List.of());
        assertThat(answer.contacts()).hasSize(13).allMatch(line -> line.error() == null && line.change() == null);
        assertThat(answer.spots()).allMatch(spot -> spot.read() == null && spot.expected() == null);
    }

    @Test
    void readings_of_one_key_tell_of_its_contacts_only() {
        LinksAnswer answer = answer(felt(WRONG).stream()
                .filter(reading -> reading.point().equals("pressing a"))
                .toList());
        assertThat(answer.contact("link.a-to-c-vent").orElseThrow().change()).isNotNull();
        assertThat(answer.contact("link.d-to-f-sharp").orElseThrow().error()).isNull();
        assertThat(answer.spots())
                .filteredOn(spot -> !spot.watch().press().equals("a"))
                .allMatch(spot -> spot.expected() == null);
    }

    private static List<String> stillCount(List<Reading> readings, WorkDone... done) {
        Measurements measured = Measurements.of(
                PlanInputs.of(ALTO).at(Stage.HEIGHTS_SET).withReadings(readings).withWorkDone(List.of(done)));
        return RegulationChapter.Question.of(ALTO, measured, RULES).readings().stream()
                .map(Reading::point)
                .distinct()
                .toList();
    }

    @Test
    void a_contact_that_was_altered_voids_what_was_felt_through_it_and_nothing_else() {
        WorkDone cut = new WorkDone("w.1", WorkKind.LINK_CHANGED, "link.d-to-f-sharp", null);
        assertThat(stillCount(felt(WRONG), cut))
                .doesNotContain("pressing d")
                .contains("pressing e", "pressing f", "pressing a", "pressing b");
    }

    @Test
    void an_arm_that_was_bent_voids_every_key_that_works_through_it() {
        WorkDone bent = new WorkDone("w.1", WorkKind.ARM_BENT, "f-sharp", null);
        assertThat(stillCount(felt(WRONG), bent))
                .doesNotContain("pressing d", "pressing e", "pressing f")
                .contains("pressing a", "pressing b");
    }

    @Test
    void every_spot_names_the_ways_its_finger_works_through() {
        assertThat(Watch.ways(ALTO, "e"))
                .contains("e", "link.e-to-f-sharp", "f-sharp", "link.f-sharp-to-bis", "bis", "link.f-sharp-to-g-sharp")
                .doesNotContain("link.d-to-f-sharp", "d", "a");
    }

    @Test
    void a_change_that_was_settled_stands_in_the_cut_list_with_its_reason() {
        Decision.Contact take = new Decision.Contact("link.d-to-f-sharp", -0.08, "leaf readings");
        Plan plan = Planner.plan(PlanInputs.of(ALTO).withDecisions(List.of(take)));
        CutLine cut = plan.cuts().stream()
                .filter(line -> line.place().equals("link.d-to-f-sharp"))
                .findFirst()
                .orElseThrow();
        assertThat(cut.method()).startsWith("take 0.08 off");
        PlannedNumber change =
                plan.number("link.d-to-f-sharp", NumberName.CHANGE).orElseThrow();
        assertThat(change.value()).isEqualTo(-0.08);
        assertThat(plan.becauses().get(change.because()).rule()).contains("leaf readings");
    }

    @Test
    void a_contact_with_a_screw_is_turned_by_its_pitch_and_not_sanded() {
        PlannedLink bis = answer(felt(WRONG)).contact("link.f-sharp-to-bis").orElseThrow();
        PlannedNumber change = Objects.requireNonNull(bis.change());
        PlannedNumber turns = Objects.requireNonNull(bis.turns());
        assertThat(bis.work()).isEqualTo(Correction.Work.SCREW);
        assertThat(bis.pulls()).isNull();
        assertThat(turns.unit()).isEqualTo("turns");
        assertThat(turns.value()).isCloseTo(change.value() / 0.4, within(1e-9));
        assertThat(turns.u()).isCloseTo(change.u() / 0.4, within(1e-9));
    }

    @Test
    void on_the_horn_without_screws_the_same_contact_is_cut() {
        Keywork odd = KeyworkFile.shipped("tarrant-loe-odd").orElseThrow();
        List<Reading> readings = felt(VirtualBench.asBuilt(odd).wrongBy("link.f-sharp-to-bis", 0.12));
        LinksAnswer answer = RegulationChapter.of(new RegulationChapter.Question(odd, readings, RULES));
        PlannedLink bis = answer.contact("link.f-sharp-to-bis").orElseThrow();
        assertThat(bis.work()).isEqualTo(Correction.Work.TAKE);
        assertThat(bis.turns()).isNull();
        assertThat(bis.pulls()).isNotNull();
    }

    @Test
    void a_settled_turn_of_a_screw_leaves_its_cork_off_the_cut_list() {
        Decision.Contact out = new Decision.Contact("link.f-sharp-to-bis", -0.08, "leaf readings");
        Plan plan = Planner.plan(PlanInputs.of(ALTO).withDecisions(List.of(out)));
        assertThat(plan.number("link.f-sharp-to-bis", NumberName.CHANGE)).isEmpty();
        PlannedNumber turn = plan.number("link.f-sharp-to-bis", NumberName.TURN).orElseThrow();
        assertThat(turn.value()).isCloseTo(-0.2, within(1e-12));
        assertThat(turn.u()).isEqualTo(RULES.value("regulation.turn-u"));
        assertThat(plan.becauses().get(turn.because()).rule()).contains("turn the screw out by 0.20 turns");
        assertThat(plan.cuts()).noneMatch(cut -> cut.method().contains("0.08"));
    }

    @Test
    void the_yield_says_how_often_all_shut_and_which_three_contacts_would_help() {
        YieldAnswer yield = YieldChapter.of(new YieldChapter.Question(ALTO, RULES));
        assertThat(yield.allClosed().value()).isLessThan(5);
        assertThat(yield.allClosed().u()).isPositive();
        assertThat(yield.mostWorth()).hasSize(3);
        assertThat(yield.becauses().leaves(yield.allClosed().because())).hasSize(3);
    }
}
