package hornwright.bench.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.bench.rules.ShopRules;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.DoubleStream;
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

    /** Heights of a pad that follows two lines, skin to 0.11 mm and felt after it. */
    private static double height(double grams, double skin, double felt) {
        double pressure = grams * 9.80665e-3 / (Math.PI * 28);
        double bend = 0.11;
        double given = pressure < skin * bend ? pressure / skin : bend + (pressure - skin * bend) / felt;
        return 4.3 - given;
    }

    private static PadLoadsTest loads(double... grams) {
        return new PadLoadsTest(
                "medium",
                28,
                4.3,
                DoubleStream.of(grams)
                        .mapToObj(g -> new PadLoadsTest.Load(g, height(g, 0.18, 0.7)))
                        .toList(),
                0.005);
    }

    @Test
    void three_weights_on_a_ring_give_back_skin_felt_and_bend_that_made_them() {
        List<Fit> fits = loads(100, 500, 1500).fits(TYPICAL).had().orElseThrow();
        assertThat(fits).extracting(Fit::property).containsExactly(Property.SEAT, Property.FELT, Property.FELT_FROM);
        assertThat(fits.get(0).value()).isCloseTo(0.18, within(1e-9));
        assertThat(fits.get(1).value()).isCloseTo(0.7, within(1e-9));
        assertThat(fits.get(2).value()).isCloseTo(0.11, within(1e-9));
        assertThat(TYPICAL.withAll(List.of(loads(100, 500, 1500)))
                        .cell("medium", Property.FELT)
                        .standing())
                .isEqualTo(Standing.MEASURED);
    }

    /** The bend is the table's, 0.1 ± 0.03 mm, and its doubt goes into the felt. */
    @Test
    void two_weights_take_the_bend_from_the_table_and_say_so_in_the_doubt() {
        List<Fit> fits = loads(100, 1500).fits(TYPICAL).had().orElseThrow();
        assertThat(fits).extracting(Fit::property).containsExactly(Property.SEAT, Property.FELT);
        Fit felt = fits.get(1);
        assertThat(Math.abs(felt.value() - 0.7)).isLessThan(2 * felt.u());
        double sharper = TYPICAL.rules().value("pad-class.medium.felt-from_mm");
        Materials known = TYPICAL.with(new Fit("medium", Property.FELT_FROM, sharper, 1e-6, "known"));
        assertThat(loads(100, 1500).fits(known).had().orElseThrow().get(1).u()).isLessThan(felt.u());
    }

    /** The stated doubt of each figure is the scatter that heights read with such a gauge give. */
    @Test
    void the_doubt_of_skin_felt_and_bend_is_the_scatter_of_readings() {
        Random random = new Random(7);
        double[] grams = {100, 900, 3000};
        double gauge = 0.003;
        List<Fit> middle = read(grams, gauge, new double[4]).fits(TYPICAL).had().orElseThrow();
        double[] squares = new double[3];
        int draws = 4000;
        for (int draw = 0; draw < draws; draw++) {
            double[] off = new double[4];
            for (int i = 0; i < 4; i++) {
                off[i] = gauge * random.nextGaussian();
            }
            List<Fit> fits = read(grams, gauge, off).fits(TYPICAL).had().orElseThrow();
            for (int i = 0; i < 3; i++) {
                squares[i] += Math.pow(fits.get(i).value() - middle.get(i).value(), 2) / draws;
            }
        }
        for (int i = 0; i < 3; i++) {
            assertThat(Math.sqrt(squares[i]) / middle.get(i).u()).isCloseTo(1, within(0.1));
        }
    }

    private static PadLoadsTest read(double[] grams, double gauge, double[] off) {
        List<PadLoadsTest.Load> loads = new ArrayList<>();
        for (int i = 0; i < grams.length; i++) {
            loads.add(new PadLoadsTest.Load(grams[i], height(grams[i], 0.18, 0.7) + off[i + 1]));
        }
        return new PadLoadsTest("medium", 28, 4.3 + off[0], loads, gauge);
    }

    @Test
    void weights_that_cannot_tell_skin_from_felt_say_what_would() {
        assertThat(loads(100, 110).fits(TYPICAL).toString()).contains("further apart");
        assertThat(loads(600, 1500).fits(TYPICAL).toString()).contains("a lighter first weight");
        assertThat(loads(50, 130).fits(TYPICAL).toString()).contains("in one line");
        PadTest heavy = new PadTest("medium", 28, 500, 4.32, 4.05, 0.01);
        assertThat(heavy.fits(TYPICAL).toString()).contains("a lighter weight");
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
