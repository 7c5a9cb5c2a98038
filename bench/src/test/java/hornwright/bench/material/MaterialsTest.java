package hornwright.bench.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.bench.rules.ShopRules;
import java.util.List;
import org.junit.jupiter.api.Test;

class MaterialsTest {
    private static final Materials TYPICAL = Materials.of(ShopRules.shipped());

    @Test
    void every_cell_of_the_table_has_a_value_a_doubt_and_a_ground() {
        assertThat(TYPICAL.listed()).contains("natural cork", "cork-rubber composite", "woven wool felt", "PTFE");
        assertThat(TYPICAL.table())
                .hasSize(TYPICAL.listed().size() * Property.ofSheets().size())
                .allSatisfy(cell -> {
                    assertThat(cell.value()).isNotNegative();
                    assertThat(cell.u()).isPositive();
                    assertThat(cell.standing()).isEqualTo(Standing.TYPICAL);
                    assertThat(cell.because()).contains("typical, check yours");
                });
    }

    @Test
    void a_material_nobody_listed_borrows_the_row_of_the_unknown() {
        assertThat(TYPICAL.value("moss", Property.MODULUS)).isEqualTo(TYPICAL.value("unknown", Property.MODULUS));
        assertThat(TYPICAL.cell("moss", Property.SETTLING).because()).contains("unknown");
    }

    @Test
    void what_the_shop_set_outranks_typical_and_what_it_measured_outranks_both() {
        ShopRules rules = ShopRules.shipped().with("material.woven-wool-felt.modulus_MPa", 3);
        Cell set = Materials.of(rules).cell("woven wool felt", Property.MODULUS);
        assertThat(set.standing()).isEqualTo(Standing.SET);
        assertThat(set.value()).isEqualTo(3);
        Fit fit = new Fit("woven wool felt", Property.MODULUS, 1.4, 0.1, "a test");
        Cell measured = Materials.of(rules).with(fit).cell("woven wool felt", Property.MODULUS);
        assertThat(measured.standing()).isEqualTo(Standing.MEASURED);
        assertThat(measured.value()).isEqualTo(1.4);
        assertThat(measured.u()).isEqualTo(0.1);
        assertThat(measured.because()).isEqualTo("a test");
    }

    @Test
    void two_tests_of_one_figure_weigh_by_their_doubt() {
        Materials both = TYPICAL.with(new Fit("leather", Property.MODULUS, 10, 1, "one"))
                .with(new Fit("leather", Property.MODULUS, 14, 2, "two"));
        Cell cell = both.cell("leather", Property.MODULUS);
        assertThat(cell.value()).isCloseTo(10.8, within(1e-12));
        assertThat(cell.u()).isCloseTo(Math.sqrt(0.8), within(1e-12));
        assertThat(cell.because()).isEqualTo("one; two");
    }

    @Test
    void a_known_weight_and_two_thicknesses_give_back_the_modulus_that_made_them() {
        double modulus = 15;
        double newtons = 500 * 9.80665e-3;
        double loaded = 2 * (1 - newtons / (20 * modulus));
        WeightTest test = new WeightTest("natural cork", 20, 0.5, 500, 2, loaded, 0.005);
        Fit fit = test.modulus(TYPICAL).had().orElseThrow();
        assertThat(fit.value()).isCloseTo(modulus, within(1e-9));
        assertThat(fit.u()).isBetween(1.0, 5.0);
        assertThat(TYPICAL.with(fit).cell("natural cork", Property.MODULUS).standing())
                .isEqualTo(Standing.MEASURED);
    }

    @Test
    void thicknesses_that_cannot_be_told_apart_ask_for_a_heavier_weight() {
        WeightTest light = new WeightTest("natural cork", 20, 0.5, 50, 2, 1.99, 0.01);
        assertThat(light.modulus(TYPICAL).had()).isEmpty();
    }

    @Test
    void a_piece_measured_fresh_and_packed_gives_its_share() {
        Fit fit = new PackingTest("woven wool felt", 2.0, 1.7, 0.02).settling();
        assertThat(fit.value()).isCloseTo(0.15, within(1e-12));
        assertThat(fit.u()).isCloseTo(0.0131, within(1e-4));
        assertThat(TYPICAL.with(fit).cell("woven wool felt", Property.SETTLING).value())
                .isCloseTo(0.15, within(1e-12));
    }

    /** Two springs in series: 1/k = Σ t/(E A). */
    @Test
    void sheets_under_one_foot_are_springs_in_series() {
        Cushion both = new Cushion(List.of(new Sheet("natural cork", 2), new Sheet("PTFE", 0.5)), 24);
        double expected = 3 * (2 / (15.0 * 24) + 0.5 / (500.0 * 24));
        assertThat(both.compressionMm(3, TYPICAL)).isCloseTo(expected, within(1e-12));
        Cushion.Law law = both.law(3, TYPICAL);
        assertThat(law.exponent()).isCloseTo(1, within(1e-12));
        assertThat(law.stiffness()).isCloseTo(3 / expected, within(1e-9));
        assertThat(law.restitution()).isBetween(0.4, 0.41);
    }

    @Test
    void a_mixed_cushion_follows_its_law_near_the_force_it_was_taken_at() {
        Cushion mixed = new Cushion(List.of(new Sheet("natural cork", 2), new Sheet("woven wool felt", 1.2)), 24);
        Cushion.Law law = mixed.law(4, TYPICAL);
        assertThat(law.exponent()).isBetween(1.0, 2.0);
        for (double newtons : new double[] {3.9, 4, 4.1}) {
            double compression = mixed.compressionMm(newtons, TYPICAL);
            assertThat(law.stiffness() * Math.pow(compression, law.exponent())).isCloseTo(newtons, within(1e-3));
        }
    }
}
