package hornwright.desk.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import hornwright.bench.care.Hazard;
import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.PlaceKind;
import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.Plan;
import hornwright.bench.plan.PlanInputs;
import hornwright.bench.plan.PlannedPlace;
import hornwright.bench.plan.PlannedStep;
import hornwright.bench.plan.Planner;
import hornwright.bench.plan.StaleReading;
import hornwright.bench.plan.Warning;
import hornwright.bench.steps.StepState;
import hornwright.bench.stock.Stock;
import hornwright.bench.stock.StockItem;
import hornwright.bench.stock.StockKind;
import hornwright.bench.survey.Condition;
import hornwright.bench.survey.Decision;
import hornwright.bench.survey.Finding;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.Originality;
import hornwright.bench.survey.PlayGrade;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.Stage;
import hornwright.bench.survey.Treatment;
import hornwright.bench.survey.TrialVerdict;
import hornwright.bench.survey.WorkDone;
import hornwright.bench.survey.WorkKind;
import hornwright.desk.keyworkfile.KeyworkFile;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Questions a bench asks, answered by the plan. */
final class BenchQuestionsTest {
    private final Keywork alto = KeyworkFile.shipped("tarrant-loe-alto").orElseThrow();
    private final PlanInputs bare = PlanInputs.of(alto);

    @Test
    void a_trial_pad_that_touches_back_first_says_how_proud_it_stands_and_how_much_adhesive_stays() {
        Plan plan = Planner.plan(tried(4.8, 0.30, stock(4.1, 4.3, 4.5)));
        PlannedPlace pad = plan.place("pad.e");
        assertThat(pad.number(NumberName.PROUD).orElseThrow().value()).isCloseTo(0.197, within(0.001));
        assertThat(pad.number(NumberName.FLOOR_TO_RIM).orElseThrow().value()).isCloseTo(4.603, within(0.001));
        assertThat(pad.number(NumberName.CHOSEN_THICKNESS).orElseThrow().value())
                .isEqualTo(4.3);
        assertThat(pad.number(NumberName.FLOAT).orElseThrow().value()).isCloseTo(0.503, within(0.001));
        assertThat(pad.advice().getFirst().words()).contains("back first").contains("0.20 mm proud");
        assertThat(pad.advice().get(1).words()).contains("leaves 0.50 mm").contains("enough to float");
    }

    @Test
    void when_too_little_adhesive_stays_a_thinner_pad_comes_first_and_front_down_last_with_its_caution() {
        Plan plan = Planner.plan(tried(4.8, 0.30, stock(4.7, 5.0)));
        PlannedPlace pad = plan.place("pad.e");
        assertThat(pad.number(NumberName.CHOSEN_THICKNESS)).isEmpty();
        assertThat(pad.advice().get(1).words()).startsWith("Order a pad between");
        assertThat(pad.advice().get(2).words()).contains("front of the cup down");
        assertThat(pad.advice().get(2).cautions()).containsExactly(Hazard.BENDING);
        assertThat(pad.advice().get(2).recheck()).contains("pad.e", "height.e", "regulate.e-to-f-sharp");
    }

    @Test
    void the_gap_of_a_wrong_stack_is_told_for_both_signs_by_exact_hinge_geometry() {
        PlannedPlace pad = Planner.plan(tried(4.8, 0.30, Stock.empty())).place("pad.e");
        assertThat(pad.number(NumberName.FRONT_GAP_IF_PROUD).orElseThrow().value() * 2)
                .isCloseTo(0.304, within(0.001));
        assertThat(pad.number(NumberName.BACK_GAP_IF_SHY).orElseThrow().value() * 2)
                .isCloseTo(0.121, within(0.001));
    }

    @Test
    void an_arm_bent_after_sign_off_asks_for_what_rests_on_it_and_voids_its_readings() {
        List<WorkDone> done = List.of(new WorkDone("w.1", WorkKind.ARM_BENT, "f-sharp", null));
        Plan plan = Planner.plan(Examples.job("job").at(Stage.RESTED).withWorkDone(done));
        List<String> rechecks = plan.order().stream()
                .filter(planned -> planned.state() instanceof StepState.Recheck)
                .map(planned -> planned.step().id())
                .toList();
        assertThat(rechecks)
                .contains(
                        "pad.f-sharp",
                        "height.f-sharp",
                        "regulate.d-to-f-sharp",
                        "regulate.e-to-f-sharp",
                        "regulate.f-to-f-sharp",
                        "regulate.f-sharp-to-bis",
                        "regulate.f-sharp-to-g-sharp")
                .doesNotContain("regulate.b-to-c-vent", "pad.c-vent");
        assertThat(step(plan, "pad.f-sharp").state())
                .isEqualTo(new StepState.Recheck("F♯: arm bent", List.of("arm.f-sharp")));
    }

    @Test
    void a_bent_arm_voids_the_trial_pad_and_height_of_its_own_cup_and_what_was_felt_through_it() {
        List<WorkDone> done = List.of(new WorkDone("w.1", WorkKind.ARM_BENT, "f-sharp", null));
        PlanInputs job = Examples.job("job").withWorkDone(done);
        List<String> stale =
                Planner.plan(job).stale().stream().map(StaleReading::reading).toList();
        List<Reading> voided = job.readings().stream()
                .filter(reading -> stale.contains(reading.id()))
                .toList();
        assertThat(voided)
                .filteredOn(reading -> reading.kind() != ReadingKind.LINKED_GAP)
                .extracting(Reading::kind, Reading::of)
                .containsExactlyInAnyOrder(
                        tuple(ReadingKind.TRIAL_PAD, "cup.f-sharp"), tuple(ReadingKind.FRONT_HEIGHT, "cup.f-sharp"));
        assertThat(voided)
                .filteredOn(reading -> reading.kind() == ReadingKind.LINKED_GAP)
                .hasSize(6);
    }

    @Test
    void levelling_voids_gaps_heights_and_trial_pads_and_leaves_cup_diameters() {
        PlanInputs job = Examples.job("job").at(Stage.HOLES_LEVEL);
        Plan plan = Planner.plan(job);
        List<String> stale = plan.stale().stream().map(StaleReading::reading).toList();
        job.readings().forEach(reading -> {
            boolean gone = switch (reading.kind()) {
                case RIM_GAP, FRONT_HEIGHT, TRIAL_PAD, LINKED_GAP, TOUCH_WEIGHT -> true;
                case PLAY -> !reading.observed().equals(new Observed.Play(PlayGrade.NONE, PlayGrade.NONE));
                default -> false;
            };
            assertThat(stale.contains(reading.id())).as(reading.toString()).isEqualTo(gone);
        });
        assertThat(plan.number("pad.d", NumberName.HEIGHT_BEFORE)).isPresent();
        assertThat(plan.number("pad.d", NumberName.HEIGHT_NOW)).isEmpty();
        assertThat(plan.number("pad.d", NumberName.DIAMETER)).isPresent();
        assertThat(plan.place("pad.d")
                        .number(NumberName.THICKNESS)
                        .orElseThrow()
                        .hasWindow())
                .isFalse();
    }

    @Test
    void a_palm_key_with_play_is_fitted_first_and_its_pad_numbers_are_provisional() {
        Reading play =
                Reading.of("r.1", ReadingKind.PLAY, "palm-d", new Observed.Play(PlayGrade.CLEAR, PlayGrade.NONE));
        Plan plan = Planner.plan(bare.withReadings(List.of(play)));
        PlannedPlace pad = plan.place("pad.palm-d");
        assertThat(pad.provisional()).contains("key fit first").contains("mm");
        Cup cup = alto.cups().get("cup.palm-d");
        double clearance = (PlayGrade.CLEAR.fromMm() + PlayGrade.CLEAR.toMm()) / 2;
        double slope = clearance / alto.keyOf(cup).tube().lengthMm();
        assertThat(pad.number(NumberName.PLAY_SHIFT).orElseThrow().value())
                .isCloseTo(slope * cup.armMm(), within(1e-6));
        assertThat(pad.number(NumberName.PLAY_TILT).orElseThrow().value())
                .isCloseTo(slope * alto.holeOf(cup).diameterMm(), within(1e-6));
        assertThat(plan.warnings().getFirst().sort()).isEqualTo(Warning.Sort.KEY_FIT);
        assertThat(pad.advice().getFirst().words()).contains("before any pad work");
        assertThat(plan.place("pad.palm-e-flat").provisional()).isNull();
    }

    @Test
    void play_that_is_only_just_felt_does_not_hold_up_the_pads() {
        Reading play =
                Reading.of("r.1", ReadingKind.PLAY, "palm-d", new Observed.Play(PlayGrade.JUST_FELT, PlayGrade.NONE));
        PlannedPlace pad = Planner.plan(bare.withReadings(List.of(play))).place("pad.palm-d");
        assertThat(pad.provisional()).isNull();
        assertThat(pad.number(NumberName.PLAY_SHIFT)).isPresent();
    }

    @Test
    void an_odd_horn_gets_only_what_is_there() {
        Keywork odd = KeyworkFile.shipped("tarrant-loe-odd").orElseThrow();
        Plan plan = Planner.plan(PlanInputs.of(odd));
        assertThat(plan.places()).hasSize(odd.places().size());
        assertThat(plan.order())
                .extracting(step -> step.step().of())
                .doesNotContain("side-f-sharp", "cup.side-f-sharp");
        assertThat(plan.cuts()).extracting(cut -> cut.place()).allMatch(odd.places()::contains);
        assertThat(plan.cuts()).extracting(cut -> cut.place()).doesNotContain("link.table-b-to-low-b");
    }

    @Test
    void a_neck_stamped_with_another_number_cannot_be_original_to_this_body_unless_explained() {
        List<Finding> stamps = List.of(stamped("stamp.body", "207"), stamped("stamp.neck", "311"));
        List<Warning> warnings = Planner.plan(bare.withFindings(stamps)).warnings();
        assertThat(warnings).hasSize(1);
        assertThat(warnings.getFirst().words())
                .contains("The neck is stamped 311, the body 207")
                .contains("cannot be original to this body unless");
        List<Decision> explained =
                List.of(new Decision.Treat("stamp.neck", Treatment.KEEP, null, "factory exchange, letter of 1931"));
        assertThat(Planner.plan(bare.withFindings(stamps).withDecisions(explained))
                        .warnings()
                        .getFirst()
                        .words())
                .contains("factory exchange");
        assertThat(Planner.plan(bare.withFindings(List.of(stamped("stamp.body", "207"), stamped("stamp.neck", "207"))))
                        .warnings())
                .isEmpty();
    }

    @Test
    void five_old_pads_worth_keeping_are_kept_and_the_mixed_set_is_warned_of() {
        List<String> keep = List.of("pad.d", "pad.e", "pad.low-c", "pad.palm-d", "pad.g");
        Plan plan = Planner.plan(bare.withFindings(pads(keep)));
        assertThat(plan.places().stream()
                        .filter(place -> place.id().startsWith("pad."))
                        .filter(place -> place.treatment() == Treatment.KEEP)
                        .map(PlannedPlace::id))
                .containsExactlyInAnyOrderElementsOf(keep);
        assertThat(plan.warnings())
                .filteredOn(warning -> warning.sort() == Warning.Sort.LINKED_SET)
                .singleElement()
                .satisfies(warning -> assertThat(warning.words()).contains("D, E kept beside"));
        assertThat(plan.place("adhesive.d").treatment()).isEqualTo(Treatment.KEEP);
        assertThat(plan.place("adhesive.f").treatment()).isEqualTo(Treatment.REPLACE_LIKE);
    }

    @Test
    void a_linked_set_kept_whole_is_not_warned_of() {
        List<String> set = alto.linkedSets().stream()
                .flatMap(linked -> linked.cups().stream())
                .map(cup -> "pad." + alto.cups().get(cup).hole())
                .distinct()
                .toList();
        assertThat(Planner.plan(bare.withFindings(pads(set))).warnings()).isEmpty();
    }

    @Test
    void a_variant_read_on_the_horn_that_the_keywork_does_not_have_is_told_first() {
        List<Reading> readings = List.of(Reading.of("r.1", ReadingKind.SWITCH, "frontF", new Observed.Says("false")));
        Warning warning = Planner.plan(bare.withReadings(readings)).warnings().getFirst();
        assertThat(warning.sort()).isEqualTo(Warning.Sort.KEYWORK);
        assertThat(warning.words()).contains("frontF");
        List<Reading> right = List.of(Reading.of("r.1", ReadingKind.SWITCH, "frontF", new Observed.Says("true")));
        assertThat(Planner.plan(bare.withReadings(right)).warnings()).isEmpty();
    }

    @Test
    void a_link_whose_space_was_measured_gets_the_thickness_that_fills_it() {
        List<Reading> readings =
                List.of(Reading.of("r.1", ReadingKind.LINK_SPACE, "link.d-to-f-sharp", Observed.Amount.mm(0.73, 0.03)));
        PlannedPlace link = Planner.plan(bare.withReadings(readings)).place("link.d-to-f-sharp");
        assertThat(link.number(NumberName.THICKNESS).orElseThrow().value()).isEqualTo(0.73);
        assertThat(link.number(NumberName.THICKNESS).orElseThrow().u()).isCloseTo(0.03, within(1e-9));
    }

    @Test
    void a_small_rim_gap_is_floated_over_and_a_large_one_levelled_with_its_caution() {
        assertThat(rim(0.04).advice()).isEmpty();
        assertThat(rim(0.07).advice()).singleElement().satisfies(advice -> {
            assertThat(advice.words()).contains("Float the pad over it");
            assertThat(advice.cautions()).isEmpty();
        });
        assertThat(rim(0.12).advice()).singleElement().satisfies(advice -> {
            assertThat(advice.words()).startsWith("Level the D hole first").contains("3.0 o'clock");
            assertThat(advice.cautions()).containsExactly(Hazard.LEVELLING);
        });
    }

    private PlannedPlace rim(double gap) {
        Reading reading = Reading.of("r.1", ReadingKind.RIM_GAP, "d", new Observed.RimGap(gap, 0.01, 3));
        return Planner.plan(bare.withReadings(List.of(reading))).place("pad.d");
    }

    @Test
    void sizes_of_nothing_are_taken_as_not_read() {
        List<Reading> slips = List.of(
                Reading.of("r.1", ReadingKind.HOLE, "d", Observed.Amount.mm(0)),
                Reading.of("r.2", ReadingKind.AXIS_TO_CENTRE, "cup.d", Observed.Amount.mm(0)),
                Reading.of("r.3", ReadingKind.AXIS_TO_FOOT, "d", Observed.Amount.mm(0)),
                Reading.of("r.4", ReadingKind.TRIAL_SHIM, "d", new Observed.TrialShim(0, 8, 7, null)));
        Plan plan = Planner.plan(bare.withReadings(slips));
        assertThat(plan.place("pad.d").numbers())
                .isEqualTo(Planner.plan(bare).place("pad.d").numbers());
        assertThat(plan.place("foot.d").numbers())
                .isEqualTo(Planner.plan(bare).place("foot.d").numbers());
    }

    private PlanInputs tried(double stack, double gap, Stock stock) {
        return bare.withStock(stock)
                .withReadings(List.of(
                        Reading.of("r.1", ReadingKind.CUP_INSIDE, "cup.e", Observed.Amount.mm(32.5)),
                        Reading.of("r.2", ReadingKind.HOLE, "e", Observed.Amount.mm(28, 0.05)),
                        Reading.of("r.3", ReadingKind.AXIS_TO_CENTRE, "cup.e", Observed.Amount.mm(32.4, 0.1)),
                        Reading.of(
                                "r.4",
                                ReadingKind.TRIAL_PAD,
                                "cup.e",
                                new Observed.TrialPad(stack, TrialVerdict.BACK_FIRST, gap, 0.02))));
    }

    private static Stock stock(double... thicknesses) {
        List<StockItem> items = new ArrayList<>();
        for (double thickness : thicknesses) {
            items.add(new StockItem(
                    "pad-" + thickness, StockKind.PAD, "kid leather over woven wool felt", 32.5, thickness, 2, null));
        }
        return new Stock(items);
    }

    private static PlannedStep step(Plan plan, String id) {
        return plan.order().stream()
                .filter(planned -> planned.step().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static Finding stamped(String place, String number) {
        return new Finding(place, "brass", null, null, Condition.SOUND, Originality.UNKNOWN, number, null);
    }

    private List<Finding> pads(List<String> kept) {
        return alto.places().stream()
                .filter(place -> place.kind() == PlaceKind.PAD)
                .map(place -> kept.contains(place.id())
                        ? Finding.of(place.id(), place.asBuilt().material(), Condition.SOUND, Originality.ORIGINAL)
                        : Finding.of(place.id(), place.asBuilt().material(), Condition.HARD, Originality.ORIGINAL))
                .toList();
    }
}
