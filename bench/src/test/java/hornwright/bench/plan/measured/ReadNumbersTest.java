package hornwright.bench.plan.measured;

import static org.assertj.core.api.Assertions.assertThat;

import hornwright.bench.plan.Reasons;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.Stage;
import hornwright.bench.survey.Unit;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class ReadNumbersTest {
    private static final ShopRules RULES = ShopRules.shipped();

    private static double u(ReadingKind kind, String with, Unit unit, @Nullable Double stated) {
        Reading reading = new Reading(
                "r.1", kind, "x", "", new Observed.Amount(4.0, unit, stated), with, "", "", null, Stage.ARRIVAL, null);
        return new ReadNumbers(RULES, new Reasons())
                .amount(reading)
                .orElseThrow()
                .u();
    }

    /** Caliper, depth rod, rule, wedge, feeler, thin leaf, micrometer, gauge, balance: each errs as the shop's rule says. */
    @ParameterizedTest
    @CsvSource({
        "CUP_INSIDE,caliper,0.05",
        "CUP_DEPTH,depth rod,0.1",
        "AXIS_TO_CENTRE,rule,0.5",
        "AXIS_TO_CENTRE,caliper,0.05",
        "FRONT_HEIGHT,wedge,0.2",
        "FOOT_CLEARANCE,feeler,0.02",
        "LINKED_GAP,thin leaf,0.01",
        "THICKNESS,thickness gauge,0.01",
        "NECK,micrometer,0.005",
        "HOLE,a borrowed ring,0.2"
    })
    void a_length_is_as_sure_as_the_instrument_it_was_read_with(ReadingKind kind, String with, double u) {
        assertThat(u(kind, with, Unit.MILLIMETRE, null)).isEqualTo(u);
    }

    @Test
    void a_force_is_as_sure_as_its_balance_and_never_by_a_rule_in_millimetres() {
        assertThat(u(ReadingKind.TOUCH_WEIGHT, "force gauge", Unit.NEWTON, null))
                .isEqualTo(0.08);
        assertThat(u(ReadingKind.TOUCH_WEIGHT, "balance", Unit.NEWTON, null)).isEqualTo(0.03);
        assertThat(u(ReadingKind.TOUCH_WEIGHT, "a bag of coins", Unit.NEWTON, null))
                .isEqualTo(RULES.value("u.other_N"));
        assertThat(u(ReadingKind.LEAK, "leak gauge", Unit.MILLILITRES_PER_SECOND, null))
                .isEqualTo(RULES.value("u.leak-gauge_mL_per_s"));
    }

    @Test
    void what_the_reading_itself_states_comes_first() {
        assertThat(u(ReadingKind.CUP_INSIDE, "caliper", Unit.MILLIMETRE, 0.013)).isEqualTo(0.013);
    }

    /** What is measured in lengths, forces or flows has a rule for its usual instrument. */
    @ParameterizedTest
    @EnumSource(ReadingKind.class)
    void every_usual_instrument_has_a_rule_of_its_own(ReadingKind kind) {
        Unit unit = kind.unit();
        if (unit == Unit.MILLIMETRE || unit == Unit.NEWTON || unit == Unit.MILLILITRES_PER_SECOND) {
            assertThat(ReadNumbers.instruments(RULES, unit)).contains(kind.usualInstrument());
        }
    }
}
