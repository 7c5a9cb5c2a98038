package hornwright.desk.feel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.bench.horn.Keywork;
import hornwright.bench.material.Materials;
import hornwright.bench.material.PadTest;
import hornwright.bench.plan.Because;
import hornwright.bench.plan.Chapter;
import hornwright.bench.plan.ClassOfPad;
import hornwright.bench.plan.Plan;
import hornwright.bench.plan.PlanInputs;
import hornwright.bench.plan.PlannedNumber;
import hornwright.bench.plan.Planner;
import hornwright.bench.plan.seat.SeatAnswer;
import hornwright.bench.plan.seat.SeatAnswer.Closes;
import hornwright.bench.plan.seat.SeatAnswer.Remedy;
import hornwright.bench.plan.seat.SeatChapter;
import hornwright.bench.plan.seat.SeatNumbers;
import hornwright.bench.plan.seat.SeatQuestion;
import hornwright.bench.plan.seat.SeatTotal;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.stock.StockKind;
import hornwright.bench.survey.Decision;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.PadClass;
import hornwright.bench.survey.PlayGrade;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import hornwright.desk.keyworkfile.KeyworkFile;
import hornwright.engines.leak.Leak;
import hornwright.engines.leak.LeakInput;
import hornwright.engines.leak.Opening;
import hornwright.engines.leak.RoomAir;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class SeatChapterTest {
    private static final Keywork ALTO = KeyworkFile.shipped("tarrant-loe-alto").orElseThrow();

    private static List<SeatAnswer> all(PlanInputs inputs) {
        return SeatQuestion.all(inputs).stream()
                .map(ask -> SeatChapter.of(ask).orElseThrow())
                .toList();
    }

    private static SeatAnswer of(String cup, Reading... readings) {
        return of(cup, ShopRules.shipped(), readings);
    }

    private static SeatAnswer of(String cup, ShopRules rules, Reading... readings) {
        PlanInputs inputs = PlanInputs.of(ALTO).withRules(rules).withReadings(List.of(readings));
        return SeatQuestion.all(inputs).stream()
                .filter(ask -> ask.cup().id().equals(cup))
                .map(ask -> SeatChapter.of(ask).orElseThrow())
                .findFirst()
                .orElseThrow();
    }

    private static Reading rim(String hole, double gap, double clock) {
        return Reading.of("r.rim", ReadingKind.RIM_GAP, hole, new Observed.RimGap(gap, 0.005, clock));
    }

    @Test
    void every_pad_of_the_horn_has_an_answer_that_walks_down_to_leaves() {
        List<SeatAnswer> pads = all(PlanInputs.of(ALTO));
        assertThat(pads).hasSize(ALTO.cups().size()).allSatisfy(pad -> {
            for (PlannedNumber number : List.of(pad.gap(), pad.leak(), pad.hole(), pad.seals())) {
                assertThat(pad.becauses().leaves(number.because())).hasSizeGreaterThan(4);
                assertThat(pad.becauses().leaves(number.because()))
                        .allSatisfy(
                                (Because.Leaf leaf) -> assertThat(leaf.rule()).isNotBlank());
            }
            assertThat(pad.seals().value()).isPositive();
        });
    }

    @Test
    void a_warped_rim_gapes_where_it_was_read_or_opposite_and_leaks() {
        SeatAnswer warped = of("cup.e", rim("e", 0.3, 4));
        assertThat(warped.rimRead()).isTrue();
        assertThat(warped.closes()).isEqualTo(Closes.LEAKS);
        assertThat(List.of(4.0, 10.0))
                .anySatisfy(at -> assertThat(warped.clock()).isCloseTo(at, within(0.4)));
        assertThat(of("cup.e", rim("e", 0.01, 4)).closes()).isEqualTo(Closes.CLOSES);
    }

    @Test
    void remedies_come_in_the_order_of_the_trade_and_a_softer_pad_over_a_warp_is_a_compromise() {
        Reading loose = Reading.of("r.play", ReadingKind.PLAY, "e", new Observed.Play(PlayGrade.LOOSE, PlayGrade.NONE));
        List<Remedy> remedies = of("cup.e", rim("e", 0.2, 4), loose).remedies();
        assertThat(remedies).hasSize(4);
        assertThat(remedies.get(0).words()).contains("play");
        assertThat(remedies.get(1).words()).contains("Level the hole");
        assertThat(remedies.get(2).words()).contains("Cup level");
        assertThat(remedies.get(3).words()).contains("softer pad").contains("compromise");
        assertThat(remedies).allSatisfy(remedy -> {
            assertThat(remedy.cost()).isNotBlank();
            assertThat(remedy.reversible()).isNotBlank();
            assertThat(remedy.cautions()).isNotEmpty();
        });
        assertThat(of("cup.e", rim("e", 0.2, 4)).remedies()).hasSize(3);
    }

    @Test
    void the_leak_a_remedy_states_is_the_engine_run_again() {
        SeatAnswer warped = of("cup.e", rim("e", 0.2, 4));
        PlannedNumber after =
                Objects.requireNonNull(warped.remedies().getFirst().leakAfter());
        double level = ShopRules.shipped().value("rim.level_mm");
        assertThat(after.value())
                .isEqualTo(of("cup.e", rim("e", level, 4)).leak().value())
                .isLessThan(warped.leak().value());
        PlannedNumber soft = Objects.requireNonNull(warped.remedies().getLast().leakAfter());
        ShopRules typical = ShopRules.shipped();
        ShopRules softer = typical.with("pad-class.medium.seat_MPa", typical.value("pad-class.soft.seat_MPa"))
                .with("pad-class.medium.felt_MPa", typical.value("pad-class.soft.felt_MPa"));
        assertThat(soft.value())
                .isEqualTo(of("cup.e", softer, rim("e", 0.2, 4)).leak().value())
                .isLessThan(warped.leak().value());
    }

    @Test
    void what_the_shop_measured_of_its_pads_is_what_the_seat_goes_by() {
        PadTest test = new PadTest("medium", 28, 100, 4.32, 4.26, 0.01);
        ShopRules measured =
                Materials.of(ShopRules.shipped()).withAll(List.of(test)).measuredRules();
        SeatAnswer pad = of("cup.e", measured, rim("e", 0.05, 4));
        assertThat(pad.becauses().source(pad.leak().because())).contains("measured by this shop");
        double times = measured.value("pad-class.medium.seat_MPa")
                / ShopRules.shipped().value("pad-class.medium.seat_MPa");
        assertThat(pad.seals().value())
                .isCloseTo(times * of("cup.e", rim("e", 0.05, 4)).seals().value(), within(1e-6));
    }

    private static SeatAnswer classed(String cup, List<Decision> decisions, Reading... readings) {
        PlanInputs inputs = PlanInputs.of(ALTO).withReadings(List.of(readings)).withDecisions(decisions);
        return SeatQuestion.all(inputs).stream()
                .filter(ask -> ask.cup().id().equals(cup))
                .map(ask -> SeatChapter.of(ask).orElseThrow())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void a_pad_is_of_the_class_of_its_horn_unless_it_has_one_of_its_own_and_says_why() {
        Decision horn = new Decision.PadSoftness(null, PadClass.FIRM, "the owner plays hard");
        Decision own = new Decision.PadSoftness("cup.e", PadClass.SOFT, "an old thin cup");
        assertThat(classed("cup.e", List.of()).pad())
                .isEqualTo(new ClassOfPad(PadClass.MEDIUM, "the usual class; nobody chose another", false));
        SeatAnswer e = classed("cup.e", List.of(own, horn));
        assertThat(e.pad().is()).isEqualTo(PadClass.SOFT);
        assertThat(e.stiffness().value()).isEqualTo(ShopRules.shipped().value("pad-class.soft.seat_MPa"));
        assertThat(e.becauses().get(e.stiffness().because()).rule()).contains("settled for this pad: an old thin cup");
        assertThat(classed("cup.f", List.of(own, horn)).pad().why())
                .isEqualTo("settled for the whole horn: the owner plays hard");
    }

    @Test
    void gap_leak_force_and_remedies_go_by_the_class_that_was_settled() {
        Reading warp = rim("e", 0.2, 4);
        SeatAnswer firm = classed("cup.e", List.of(new Decision.PadSoftness(null, PadClass.FIRM, "so")), warp);
        SeatAnswer soft = classed("cup.e", List.of(new Decision.PadSoftness("cup.e", PadClass.SOFT, "so")), warp);
        SeatAnswer usual = of("cup.e", warp);
        assertThat(soft.gap().value())
                .isLessThan(usual.gap().value())
                .isLessThan(firm.gap().value());
        assertThat(soft.leak().value()).isLessThan(firm.leak().value());
        assertThat(firm.seals().value() / soft.seals().value()).isCloseTo(0.35 / 0.12, within(1e-6));
        assertThat(firm.remedies().getLast().words()).startsWith("A softer pad, medium instead of firm");
        assertThat(Objects.requireNonNull(firm.remedies().getLast().leakAfter()).value())
                .isEqualTo(usual.leak().value());
        assertThat(soft.remedies()).noneMatch(remedy -> remedy.words().contains("softer"));
    }

    @Test
    void a_soft_pad_over_a_warped_hole_is_called_a_compromise_even_where_it_closes() {
        List<Decision> soft = List.of(new Decision.PadSoftness(null, PadClass.SOFT, "so"));
        SeatAnswer over = classed("cup.e", soft, rim("e", 0.07, 4));
        assertThat(over.compromiseOverMm()).isEqualTo(0.07);
        Chapter told = SeatNumbers.whole(List.of(over), Map.of("cup.e", "pad.e"));
        assertThat(Objects.requireNonNull(told.advice().get("pad.e")).getFirst().words())
                .contains("compromise")
                .contains("0.07 mm");
        assertThat(classed("cup.e", soft, rim("e", 0.03, 4)).compromiseOverMm()).isNull();
        assertThat(of("cup.e", rim("e", 0.07, 4)).compromiseOverMm()).isNull();
    }

    @Test
    void the_plan_and_its_order_name_the_class_and_the_shelf_gives_only_pads_of_it() {
        Reading inside = Reading.of("r.1", ReadingKind.CUP_INSIDE, "cup.e", Observed.Amount.mm(33));
        Plan usual = Planner.plan(PlanInputs.of(ALTO).withReadings(List.of(inside)));
        Plan soft = Planner.plan(PlanInputs.of(ALTO)
                .withReadings(List.of(inside))
                .withDecisions(List.of(new Decision.PadSoftness(null, PadClass.SOFT, "so"))));
        assertThat(Objects.requireNonNull(soft.place("pad.e").padClass()).is()).isEqualTo(PadClass.SOFT);
        assertThat(soft.place("foot.e").padClass()).isNull();
        assertThat(usual.orders()).allMatch(line -> line.padClass().isEmpty());
        assertThat(soft.orders().stream().filter(line -> line.kind() == StockKind.PAD))
                .isNotEmpty()
                .allMatch(line -> line.padClass().equals("soft"));
    }

    /** The leak engine knows nothing of seats. */
    @Test
    void the_hole_that_is_named_lets_through_as_much_as_the_pad() {
        SeatAnswer warped = of("cup.e", rim("e", 0.3, 4));
        double through = Leak.reckon(new LeakInput(
                                new Opening.Orifice(warped.hole().value() / 1e3, Leak.SHARP_EDGE),
                                1000,
                                1.5,
                                RoomAir.at(293.15)))
                        .flow()
                * 1e6;
        assertThat(through).isCloseTo(warped.leak().value(), within(1e-9));
    }

    @Test
    void the_total_is_the_sum_and_its_hole_the_one_that_leaks_the_sum() {
        List<SeatAnswer> pads = all(PlanInputs.of(ALTO).withReadings(List.of(rim("e", 0.3, 4), rim2())));
        SeatTotal total = SeatTotal.of(pads);
        double sum = pads.stream().mapToDouble(pad -> pad.leak().value()).sum();
        assertThat(total.leak().value()).isCloseTo(sum, within(1e-9));
        double areas = pads.stream()
                .mapToDouble(pad -> pad.hole().value() * pad.hole().value())
                .sum();
        assertThat(total.hole().value()).isCloseTo(Math.sqrt(areas), within(1e-9));
    }

    private static Reading rim2() {
        return Reading.of("r.rim2", ReadingKind.RIM_GAP, "low-b", new Observed.RimGap(0.25, 0.005, 7));
    }
}
