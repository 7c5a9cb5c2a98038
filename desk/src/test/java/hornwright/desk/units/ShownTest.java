package hornwright.desk.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

class ShownTest {
    @Test
    void the_plus_minus_is_twice_the_standard_uncertainty() {
        assertThat(Shown.of(9.83, 0.2)).isEqualTo("9.8 ± 0.4");
        assertThat(Shown.of(5.071, 0.045)).isEqualTo("5.07 ± 0.09");
    }

    /** "23 ± 26 pulls" tells nobody what to do. */
    @Test
    void a_plus_minus_larger_than_its_value_is_said_as_how_far_it_may_reach() {
        assertThat(Shown.of(23, 13)).isEqualTo("up to 49");
        assertThat(Shown.signed(0.03, 0.02)).isEqualTo("−0.01 to 0.07");
        assertThat(Shown.of(-0.02, 0.015)).isEqualTo("−0.05 to 0.01");
        assertThat(Shown.signed(-0.05, 0.01)).isEqualTo("−0.05 ± 0.02");
        assertThat(Shown.unsure(4, 2, true)).isEmpty();
        assertThat(Shown.unsure(0, 0, true)).isEmpty();
    }

    @Test
    void a_choice_has_no_plus_minus() {
        assertThat(Shown.of(48.5, 0)).isEqualTo("48.5");
        assertThat(Shown.of(0.79, 0)).isEqualTo("0.79");
    }

    @Test
    void a_plus_minus_is_never_nothing() {
        assertThat(Shown.of(12.3456, 0.002)).isEqualTo("12.346 ± 0.004");
        assertThat(Shown.of(12.3, 0.00001)).isEqualTo("12.3");
        for (double u = 1e-6; u < 10; u *= 1.3) {
            assertThat(Shown.plusMinus(u)).doesNotMatch("0\\.0+");
        }
    }

    @Test
    void a_negative_number_has_a_true_minus_and_zero_has_none() {
        assertThat(Shown.fixed(-0.2, 1)).isEqualTo("−0.2");
        assertThat(Shown.fixed(-0.01, 1)).isEqualTo("0.0");
    }

    @Test
    void rounding_never_widens_a_window() {
        Random random = new Random(5);
        for (int i = 0; i < 2000; i++) {
            double low = 3 + random.nextDouble();
            double high = low + 0.2 + random.nextDouble();
            String[] ends = Shown.window(low, high).split(" to ");
            assertThat(Double.parseDouble(ends[0])).isGreaterThanOrEqualTo(low - 1e-6);
            assertThat(Double.parseDouble(ends[ends.length - 1])).isLessThanOrEqualTo(high + 1e-6);
        }
    }

    @Test
    void a_window_narrower_than_a_tenth_is_its_middle() {
        assertThat(Shown.window(4.32, 4.36)).isEqualTo("4.34");
        assertThat(Shown.window(4.3, 4.3)).isEqualTo("4.3");
    }
}
