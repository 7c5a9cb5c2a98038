package hornwright.engines.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class QuantityTest {
    @Test
    void a_length_in_millimetres_comes_back_in_millimetres() {
        assertThat(Length.ofMillimetres(4.7).inMillimetres()).isCloseTo(4.7, within(1e-12));
        assertThat(Length.ofMillimetres(4.7).metres()).isCloseTo(0.0047, within(1e-15));
    }

    @Test
    void arithmetic_stays_inside_a_dimension() {
        assertThat(Force.ofGramsForce(100).plus(new Force(1)).newtons()).isCloseTo(1.980665, within(1e-12));
        assertThat(Length.ofMillimetres(3).over(Length.ofMillimetres(2))).isCloseTo(1.5, within(1e-12));
        assertThat(Length.ofMillimetres(3)).isGreaterThan(Length.ofMillimetres(2));
    }

    @Test
    void a_derived_number_is_followed_down_to_its_leaves() {
        var depth = Measured.of(
                Length.ofMillimetres(3), Length.ofMillimetres(0.1), new Source.Instrumented("depth rod", "r.1"));
        var adhesive = Measured.exact(Length.ofMillimetres(0.5), new Source.ShopRule("adhesive, typical", true));
        var inner = Measured.exact(
                Length.ofMillimetres(2.5),
                new Source.Derived(
                        "depth less adhesive",
                        List.of(new Source.Input("depth", depth), new Source.Input("adhesive", adhesive))));
        var outer = new Source.Derived("twice", List.of(new Source.Input("inner", inner)));
        assertThat(outer.leaves()).containsExactly(depth.source(), adhesive.source());
    }

    @Test
    void a_number_that_is_no_number_is_refused() {
        assertThatThrownBy(() -> Measured.exact(new Length(Double.NaN), new Source.Assumed("demo")))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Source.Derived("nothing", List.of())).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Source.Published(" ")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void an_outcome_without_a_value_says_what_would_decide_it() {
        Outcome<Length> missing = Outcome.missing("cup depth");
        assertThat(missing.map(Length::inMillimetres)).isEqualTo(new Outcome.Missing<Double>(List.of("cup depth")));
        assertThat(Outcome.of(Length.ofMillimetres(2), "by hand")
                        .map(Length::inMillimetres)
                        .had())
                .hasValueSatisfying(mm -> assertThat(mm).isCloseTo(2, within(1e-12)));
    }
}
