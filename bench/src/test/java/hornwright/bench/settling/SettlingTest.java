package hornwright.bench.settling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.bench.material.Fit;
import hornwright.bench.material.Materials;
import hornwright.bench.material.Property;
import hornwright.bench.rules.ShopRules;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class SettlingTest {
    private static final ShopRules RULES = ShopRules.shipped();
    private static final Materials TYPICAL = Materials.of(RULES);
    private static final LocalDate LAID = LocalDate.of(2026, 3, 2);

    private static Settling fresh(String material, double thickness) {
        return Settling.of(List.of(new Laid("foot.f", material, thickness, true)), 0, 24, TYPICAL);
    }

    /** Common practice. */
    @Test
    void soft_felt_settles_more_than_dense_felt_and_that_more_than_cork() {
        assertThat(fresh("woven wool felt", 2).lossMm())
                .isGreaterThan(fresh("dense wool felt", 2).lossMm());
        assertThat(fresh("dense wool felt", 2).lossMm())
                .isGreaterThan(fresh("natural cork", 2).lossMm());
        assertThat(fresh("natural cork", 2).lossMm())
                .isGreaterThan(fresh("synthetic felt", 2).lossMm());
        assertThat(fresh("PTFE", 2).lossMm()).isZero();
    }

    @Test
    void losses_of_layers_add_and_their_doubts_add_by_squares() {
        Settling both = Settling.of(
                List.of(
                        new Laid("foot.f", "natural cork", 2, true),
                        new Laid("bumper.f", "woven wool felt", 1.2, true)),
                0,
                24,
                TYPICAL);
        assertThat(both.lossMm()).isCloseTo(2 * 0.065 + 1.2 * 0.175, within(1e-12));
        assertThat(both.u()).isCloseTo(Math.hypot(2 * 0.02, 1.2 * 0.045), within(1e-12));
        assertThat(both.parts()).extracting(Settling.Part::place).containsExactly("foot.f", "bumper.f");
    }

    @Test
    void what_has_packed_for_years_packs_no_more() {
        Settling old = Settling.of(List.of(new Laid("foot.f", "woven wool felt", 2, false)), 0, 24, TYPICAL);
        assertThat(old.lossMm()).isZero();
        assertThat(old.u()).isZero();
    }

    @Test
    void under_a_spring_a_thinner_layer_also_gives_less() {
        List<Laid> felt = List.of(new Laid("foot.f", "woven wool felt", 2, true));
        Settling loaded = Settling.of(felt, 1.5, 24, TYPICAL);
        double strain = Math.sqrt(1.5 / (24 * 2));
        assertThat(loaded.lossMm()).isCloseTo(2 * 0.175 * (1 - strain), within(1e-12));
    }

    /** 2 mm of soft felt at 15 in 100 and an arm ratio of 2.5 lift the key 0.75 mm: plain arithmetic. */
    @Test
    void the_cup_rises_by_the_loss_times_the_arm_ratio() {
        Materials fifteen = TYPICAL.with(new Fit("woven wool felt", Property.SETTLING, 0.15, 0.01, "a test"));
        Settling foot = Settling.of(List.of(new Laid("foot.f", "woven wool felt", 2, true)), 0, 24, fifteen);
        Recheck recheck = Recheck.of(foot, 2.5, LAID, RULES);
        assertThat(recheck.inTheEndMm()).isCloseTo(0.75, within(1e-12));
        assertThat(recheck.byThenMm()).isBetween(0.6, 0.75);
        assertThat(recheck.u()).isBetween(0.04, 0.15);
        assertThat(recheck.on()).isEqualTo(LAID.plusDays(30));
    }

    @Test
    void the_shop_says_when_it_looks_again() {
        Recheck recheck = Recheck.of(fresh("natural cork", 2), 2, LAID, RULES.with("settling.recheck_d", 14));
        assertThat(recheck.on()).isEqualTo(LocalDate.of(2026, 3, 16));
        assertThat(recheck.byThenMm())
                .isLessThan(Recheck.of(fresh("natural cork", 2), 2, LAID, RULES).byThenMm());
    }
}
