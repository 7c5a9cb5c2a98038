package hornwright.bench.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ShopRulesTest {
    @Test
    void every_shipped_rule_has_a_meaning_a_range_and_a_mark() {
        assertThat(ShopRules.shipped().all()).hasSizeGreaterThan(100).allSatisfy(rule -> {
            assertThat(rule.says()).isNotBlank();
            assertThat(rule.least()).isLessThan(rule.most());
            assertThat(rule.label()).contains("typical, check yours");
        });
    }

    @Test
    void every_lowest_figure_has_a_highest_above_it() {
        ShopRules rules = ShopRules.shipped();
        assertThat(rules.all())
                .filteredOn(rule -> rule.id().contains(".least_") && !rule.id().startsWith("adhesive"))
                .isNotEmpty()
                .allSatisfy(low -> assertThat(low.value())
                        .isLessThanOrEqualTo(rules.value(low.id().replace(".least_", ".most_"))));
    }

    @Test
    void a_rule_the_shop_has_set_says_so() {
        ShopRules rules = ShopRules.shipped().with("pad.allowance_mm", 0.5);
        assertThat(rules.value("pad.allowance_mm")).isEqualTo(0.5);
        assertThat(rules.get("pad.allowance_mm").label()).isEqualTo("set by this shop");
        assertThat(ShopRules.shipped().value("pad.allowance_mm")).isZero();
    }

    @Test
    void a_value_outside_its_range_is_refused() {
        assertThatThrownBy(() -> ShopRules.shipped().with("pad.allowance_mm", 7))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("pad.allowance_mm");
    }

    @Test
    void diameters_go_to_the_stocked_step() {
        assertThat(Rounding.NEAREST.to(41.0, 0.5)).isCloseTo(41.0, within(1e-9));
        assertThat(Rounding.NEAREST.to(39.7, 0.5)).isCloseTo(39.5, within(1e-9));
        assertThat(Rounding.NEAREST.to(39.75, 0.5)).isCloseTo(39.5, within(1e-9));
        assertThat(Rounding.UP.to(39.6, 0.5)).isCloseTo(40.0, within(1e-9));
        assertThat(Rounding.UP.to(39.5, 0.5)).isCloseTo(39.5, within(1e-9));
        assertThat(Rounding.DOWN.to(39.9, 0.5)).isCloseTo(39.5, within(1e-9));
    }
}
