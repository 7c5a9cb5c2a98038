package hornwright.engines.spring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import hornwright.engines.spring.Section.Flat;
import hornwright.engines.spring.Section.Round;
import hornwright.engines.spring.SpringChoice.Stock;
import hornwright.engines.spring.SpringChoice.Wanted;
import hornwright.engines.spring.SpringInput.Bend;
import hornwright.engines.spring.SpringInput.Model;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

class SpringPropertyTest {
    private static final double STEEL = 205e9;
    private static final double BRONZE = 110e9;
    private static final List<Section> NEEDLES =
            List.of(new Round(0.0013), new Round(0.0008), new Round(0.001), new Round(0.0009), new Round(0.0011));

    private static SpringResult bent(Section section, double modulus, double length, Bend bend, Model model) {
        return Spring.reckon(new SpringInput(section, modulus, length, bend, model, 0.008, 0.03, null));
    }

    @Test
    void force_and_deflection_are_two_ways_to_say_one_thing() {
        Random random = new Random(1);
        for (int i = 0; i < 500; i++) {
            Section section = new Round(0.0005 + 0.001 * random.nextDouble());
            double length = 0.02 + 0.04 * random.nextDouble();
            Bend to = new Bend.To(length * Math.pow(10, -6 + 5.95 * random.nextDouble()));
            SpringResult there = bent(section, STEEL, length, to, Model.LARGE);
            SpringResult back = bent(section, STEEL, length, new Bend.Under(there.force()), Model.LARGE);
            assertThat(back.deflection()).isCloseTo(there.deflection(), Percentage.withPercentage(1e-8));
            assertThat(back.stress()).isCloseTo(there.stress(), Percentage.withPercentage(1e-7));
        }
    }

    @Test
    void a_slightly_bent_spring_is_proportional() {
        SpringResult large = bent(new Round(0.001), STEEL, 0.04, new Bend.To(4e-8), Model.LARGE);
        SpringResult linear = bent(new Round(0.001), STEEL, 0.04, new Bend.To(4e-8), Model.LINEAR);
        assertThat(large.force()).isCloseTo(linear.force(), Percentage.withPercentage(1e-9));
        assertThat(large.stress()).isCloseTo(linear.stress(), Percentage.withPercentage(1e-9));
        assertThat(large.linearErrorShare()).isCloseTo(0, within(1e-10));
        SpringResult free = bent(new Round(0.001), STEEL, 0.04, new Bend.To(0), Model.LARGE);
        assertThat(free.force()).isZero();
        assertThat(free.rate()).isCloseTo(linear.rate(), Percentage.withPercentage(1e-12));
    }

    @Test
    void a_spring_bent_far_stiffens_and_proportion_asks_too_little_of_it() {
        double rate = 0;
        double error = 1e-9;
        for (double share = 0.05; share < 0.999; share += 0.01) {
            SpringResult bent = bent(new Round(0.001), STEEL, 0.04, new Bend.To(0.04 * share), Model.LARGE);
            assertThat(bent.rate()).isGreaterThan(rate);
            assertThat(bent.linearErrorShare()).isLessThan(error);
            rate = bent.rate();
            error = bent.linearErrorShare();
        }
    }

    @Test
    void the_rate_is_the_slope_of_the_force_even_where_the_closed_form_takes_over() {
        for (double share : new double[] {0.1, 0.5, 0.9, 0.99, 0.9942, 0.999}) {
            double up = Elastica.bentTo(share + 1e-6).load();
            double down = Elastica.bentTo(share - 1e-6).load();
            assertThat(Elastica.bentTo(share).rate()).isCloseTo((up - down) / 2e-6, Percentage.withPercentage(1e-3));
        }
    }

    @Test
    void the_work_done_on_the_spring_is_the_energy_of_its_curve() {
        int steps = 2000;
        double work = 0;
        for (int i = 0; i < steps; i++) {
            work += Elastica.bentTo(0.7 * (i + 0.5) / steps).load() * 0.7 / steps;
        }
        Elastica end = Elastica.bentTo(0.7);
        double stored = end.load() * (Math.sin(end.tipAngle()) - end.deflection());
        assertThat(work).isCloseTo(stored, Percentage.withPercentage(1e-4));
    }

    /** Common practice: five parts in a hundred more diameter stiffens by 22, ten more length softens by 25. */
    @Test
    void thickness_counts_to_the_fourth_power_and_length_to_the_third() {
        double usual = bent(new Round(0.001), STEEL, 0.04, new Bend.To(1e-6), Model.LARGE)
                .force();
        assertThat(bent(new Round(0.00105), STEEL, 0.04, new Bend.To(1e-6), Model.LARGE)
                                .force()
                        / usual)
                .isCloseTo(1.22, within(0.01));
        assertThat(bent(new Round(0.001), STEEL, 0.044, new Bend.To(1e-6), Model.LARGE)
                                .force()
                        / usual)
                .isCloseTo(0.75, within(0.01));
    }

    @Test
    void another_metal_feels_the_same_at_its_equal_size_however_far_it_is_bent() {
        for (Section steel : List.of(new Round(0.001), new Flat(0.004, 0.0003))) {
            Section bronze = steel.asStiffIn(STEEL, BRONZE);
            assertThat(bronze.outermost()).isGreaterThan(steel.outermost());
            for (double deflection : new double[] {0.001, 0.01, 0.03}) {
                SpringResult old = bent(steel, STEEL, 0.04, new Bend.To(deflection), Model.LARGE);
                SpringResult fresh = bent(bronze, BRONZE, 0.04, new Bend.To(deflection), Model.LARGE);
                assertThat(fresh.force()).isCloseTo(old.force(), Percentage.withPercentage(1e-9));
                assertThat(fresh.rate()).isCloseTo(old.rate(), Percentage.withPercentage(1e-9));
                assertThat(fresh.stress()).isLessThan(old.stress());
            }
        }
    }

    @Test
    void the_size_nearest_to_a_wanted_touch_is_chosen_with_one_down_and_one_up() {
        Wanted wanted = new Wanted(0.39, 0.03, 0.005, 0.04, 0.005);
        SpringChoice choice = SpringChoice.of(wanted, new Stock(NEEDLES, STEEL, 2000e6));
        assertThat(choice.best().section()).isEqualTo(new Round(0.001));
        assertThat(Objects.requireNonNull(choice.down()).section()).isEqualTo(new Round(0.0009));
        assertThat(Objects.requireNonNull(choice.up()).section()).isEqualTo(new Round(0.0011));
        assertThat(choice.best().shareOfWanted()).isCloseTo(1, within(0.1));
        assertThat(choice.up().shareOfWanted() / choice.best().shareOfWanted()).isCloseTo(1.4641, within(1e-9));
        assertThat(choice.best().stressShare()).isBetween(0.3, 0.7);
    }

    @Test
    void beyond_the_stock_the_last_size_is_named_and_has_no_neighbour() {
        Wanted heavy = new Wanted(5, 0.03, 0.005, 0.04, 0.005);
        SpringChoice choice = SpringChoice.of(heavy, new Stock(NEEDLES, STEEL, null));
        assertThat(choice.best().section()).isEqualTo(new Round(0.0013));
        assertThat(choice.up()).isNull();
        assertThat(choice.best().shareOfWanted()).isLessThan(0.5);
        Wanted light = new Wanted(0.01, 0.03, 0.005, 0.04, 0.005);
        assertThat(SpringChoice.of(light, new Stock(NEEDLES, STEEL, null)).down())
                .isNull();
    }

    @Test
    void springs_without_sense_are_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> bent(new Round(0.001), STEEL, 0.04, new Bend.To(0.04), Model.LARGE));
        assertThatIllegalArgumentException().isThrownBy(() -> new Round(0));
        assertThatIllegalArgumentException().isThrownBy(() -> new Bend.Under(-1));
        assertThatIllegalArgumentException().isThrownBy(() -> new Stock(List.of(), STEEL, null));
    }
}
