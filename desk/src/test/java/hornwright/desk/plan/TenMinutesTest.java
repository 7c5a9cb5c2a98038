package hornwright.desk.plan;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.bench.horn.Key;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.PlaceKind;
import hornwright.bench.plan.Missing;
import hornwright.bench.plan.NumberName;
import hornwright.bench.plan.OrderLine;
import hornwright.bench.plan.Plan;
import hornwright.bench.plan.PlanInputs;
import hornwright.bench.plan.PlannedPlace;
import hornwright.bench.plan.Planner;
import hornwright.bench.stock.StockKind;
import hornwright.bench.survey.ReadingKind;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Ten minutes of input must already pay. */
final class TenMinutesTest {
    private final PlanInputs job = Examples.job("job-ten-minutes");
    private final Keywork keywork = job.keywork();
    private final Plan plan = Planner.plan(job);

    @Test
    void every_pad_stands_in_the_order_once_with_its_thickness_as_a_class() {
        List<OrderLine> pads = plan.orders().stream()
                .filter(line -> line.kind() == StockKind.PAD)
                .toList();
        assertThat(pads.stream().flatMap(line -> line.places().stream()))
                .containsExactlyInAnyOrderElementsOf(
                        keywork.cups().stream().map(cup -> "pad." + cup.hole()).toList());
        assertThat(pads).allSatisfy(line -> {
            assertThat(line.diameterMm()).isNotNull();
            assertThat(line.thicknessMm()).isNull();
            assertThat(line.thicknessWords()).startsWith("class ");
            assertThat(line.provisional()).isTrue();
        });
        assertThat(pads.stream().mapToInt(OrderLine::spares).sum()).isPositive();
    }

    @Test
    void no_thickness_window_is_claimed_and_no_pad_chosen() {
        keywork.cups().forEach(cup -> {
            PlannedPlace pad = plan.place("pad." + cup.hole());
            assertThat(pad.number(NumberName.THICKNESS)).hasValueSatisfying(number -> {
                assertThat(number.hasWindow()).isFalse();
                assertThat(number.u()).isGreaterThan(0.3);
            });
            assertThat(pad.number(NumberName.CHOSEN_THICKNESS)).isEmpty();
        });
    }

    @Test
    void feet_and_felts_that_may_be_renewed_are_cut_full_from_a_sheet_with_what_comes_off() {
        List<PlannedPlace> feet = keywork.places().stream()
                .filter(place -> place.kind() == PlaceKind.FOOT || place.kind() == PlaceKind.GUARD)
                .map(place -> plan.place(place.id()))
                .toList();
        assertThat(feet).isNotEmpty().allSatisfy(foot -> {
            double wanted = foot.number(NumberName.THICKNESS).orElseThrow().value();
            assertThat(foot.number(NumberName.CUT_FULL).orElseThrow().value()).isGreaterThan(wanted);
            assertThat(foot.number(NumberName.SHEET).orElseThrow().value())
                    .isGreaterThanOrEqualTo(
                            foot.number(NumberName.CUT_FULL).orElseThrow().value() - 1e-9);
            assertThat(foot.number(NumberName.SAND).orElseThrow().value()).isPositive();
        });
        assertThat(plan.cuts())
                .extracting(cut -> cut.place())
                .containsAll(feet.stream().map(PlannedPlace::id).toList());
    }

    @Test
    void no_link_thickness_is_claimed_only_order_and_method() {
        keywork.places().where(place -> place.kind() == PlaceKind.LINK).forEach(place -> {
            assertThat(plan.place(place.id()).number(NumberName.THICKNESS)).isEmpty();
        });
        assertThat(plan.cuts().stream().filter(cut -> cut.place().startsWith("link.")))
                .isNotEmpty()
                .allSatisfy(cut -> {
                    assertThat(cut.finishMm()).isNull();
                    assertThat(cut.method()).isEqualTo("cut full, sand until both close together");
                });
        assertThat(plan.order().stream().map(step -> step.step().id()).filter(id -> id.startsWith("regulate.")))
                .hasSize(keywork.links().size());
    }

    @Test
    void the_baseline_holds_the_ten_heights_that_were_read_and_finds_the_odd_one() {
        assertThat(keywork.cups().stream()
                        .filter(cup -> plan.number("pad." + cup.hole(), NumberName.HEIGHT_BEFORE)
                                .isPresent()))
                .hasSize(10);
        assertThat(plan.number("pad.f", NumberName.OFF_THE_LINE)).isPresent();
    }

    @Test
    void keys_come_off_in_an_order_in_which_none_is_in_the_way_of_another() {
        List<String> rods = plan.removal().stream().map(turn -> turn.rod()).toList();
        plan.removal()
                .forEach(turn -> turn.after()
                        .forEach(before -> assertThat(rods.indexOf(before)).isLessThan(rods.indexOf(turn.rod()))));
        assertThat(plan.removal().stream().flatMap(turn -> turn.keys().stream()))
                .containsExactlyInAnyOrderElementsOf(
                        keywork.keys().stream().map(Key::id).toList());
    }

    @Test
    void springs_are_replaced_like_for_like_only() {
        plan.orders().stream()
                .filter(line -> line.kind() == StockKind.NEEDLE_SPRING || line.kind() == StockKind.FLAT_SPRING)
                .flatMap(line -> line.places().stream().map(place -> List.of(place, line.material())))
                .forEach(spring -> assertThat(keywork.places()
                                .get(spring.getFirst())
                                .asBuilt()
                                .material())
                        .isEqualTo(spring.getLast()));
    }

    @Test
    void the_next_reading_is_named_and_what_is_lost_at_strip_down_comes_first() {
        Missing next = plan.missing().getFirst();
        assertThat(next.kind()).isEqualTo(ReadingKind.FRONT_HEIGHT);
        assertThat(next.perishable()).isTrue();
        assertThat(plan.missing()).allSatisfy(missing -> {
            assertThat(missing.decides()).isNotEmpty();
            assertThat(missing.measure()).isNotBlank();
            assertThat(missing.seconds()).isPositive();
        });
    }

    @Test
    void hours_and_money_come_as_ranges() {
        assertThat(Objects.requireNonNull(plan.money().hours()).low())
                .isLessThan(plan.money().hours().high());
        assertThat(Objects.requireNonNull(plan.money().cost()).low())
                .isLessThan(plan.money().cost().high());
    }

    @Test
    void with_nothing_read_at_all_there_is_order_removal_and_what_to_ask_first() {
        Plan bare = Planner.plan(PlanInputs.of(keywork));
        assertThat(bare.order()).isNotEmpty();
        assertThat(bare.removal()).isNotEmpty();
        assertThat(bare.money().hours()).isNotNull();
        assertThat(bare.orders().stream().filter(line -> line.kind() == StockKind.PAD))
                .isEmpty();
        assertThat(bare.places().stream()
                        .filter(place -> place.number(NumberName.DIAMETER).isPresent()))
                .noneMatch(place -> place.id().startsWith("pad."));
        assertThat(bare.missing().getFirst().measure()).isEqualTo("serial number");
    }
}
