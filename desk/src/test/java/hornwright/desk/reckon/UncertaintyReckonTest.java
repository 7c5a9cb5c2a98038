package hornwright.desk.reckon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

class UncertaintyReckonTest {
    private static final Engine UNCERTAINTY = new UncertaintyReckon();

    private static String ask(String inputs, String model, String more) {
        return "{'inputs': [" + inputs + "], 'model': '" + model + "'" + more + "}";
    }

    private static String input(String id, double value, double u, String shape, String more) {
        return "{'id': '" + id + "', 'value': " + value + ", 'u': " + u + ", 'shape': '" + shape + "'" + more + "}";
    }

    /** JCGM 100:2008, example H.1: 50 000 838 nm, 31.71 nm, 16.66 dof, 99 % within 93 nm. */
    @Test
    void the_end_gauge_has_its_published_uncertainty() {
        String inputs = String.join(
                ", ",
                input("ls", 50000623, 25, "normal", ", 'dof': 18"),
                input("d", 215, 9.7, "normal", ", 'dof': 25.6"),
                input("as", 11.5e-6, 1.2e-6, "rectangular", ""),
                input("th", -0.1, 0.41, "normal", ""),
                input("da", 0, 0.58e-6, "rectangular", ", 'dof': 50"),
                input("dt", 0, 0.029, "rectangular", ", 'dof': 2"));
        JsonNode out =
                Asked.out(UNCERTAINTY, ask(inputs, "ls + d - ls*(da*th + as*dt)", ", 'draws': 1000, 'coverage': 0.99"));
        assertThat(out.get("value").doubleValue()).isCloseTo(50000838, within(1e-6));
        assertThat(out.get("u").doubleValue()).isCloseTo(31.7106, within(1e-4));
        assertThat(out.get("dof").doubleValue()).isCloseTo(16.656, within(1e-3));
        assertThat(out.at("/interval/1").doubleValue() - 50000838).isCloseTo(92.62, within(0.01));
        assertThat(out.get("contributions")).hasSize(6);
        assertThat(out.at("/contributions/5").doubleValue()).isCloseTo(-16.675, within(1e-3));
    }

    @Test
    void known_inputs_have_no_degrees_of_freedom_to_tell() {
        JsonNode out =
                Asked.out(UNCERTAINTY, ask(input("x", 1, 0.1, "normal", ""), "2*x", ", 'draws': 20000, 'seed': 7"));
        assertThat(out.get("dof").isNull()).isTrue();
        assertThat(out.at("/interval/0").doubleValue()).isCloseTo(2 - 0.2 * 1.959964, within(1e-6));
        assertThat(out.at("/montecarlo/u").doubleValue()).isCloseTo(0.2, within(0.005));
        assertThat(out.at("/montecarlo/shortest")).hasSize(2);
    }

    @Test
    void draws_that_are_not_finite_fall_short_with_their_share() {
        Answer answer =
                Asked.answer(UNCERTAINTY, ask(input("x", 0.1, 0.1, "normal", ""), "log(x)", ", 'draws': 10000"));
        assertThat(answer.shortfall()).contains("of the draws is not finite");
        assertThat(answer.out().node().at("/montecarlo/not_finite_share").doubleValue())
                .isCloseTo(0.159, within(0.02));
        assertThat(answer.out().node().at("/montecarlo/value").isNull()).isTrue();
        assertThat(answer.out().node().get("u").doubleValue()).isCloseTo(1, within(1e-12));
    }

    @Test
    void every_fault_is_told_at_its_place() {
        String x = input("x", 1, 0.1, "normal", "");
        assertThat(Asked.faults(UNCERTAINTY, ask(x, "x + w", ""))).containsExactly("/model");
        assertThat(Asked.faults(UNCERTAINTY, ask(x + ", " + x, "x", ""))).containsExactly("/inputs/1/id");
        assertThat(Asked.faults(UNCERTAINTY, ask(input("pi", 1, -1, "gauss", ""), "pi", "")))
                .containsExactly("/inputs/0/id", "/inputs/0/u", "/inputs/0/shape");
        assertThat(Asked.faults(UNCERTAINTY, ask(input("x", 1, 1, "student", ""), "x", "")))
                .containsExactly("/inputs/0/dof");
        assertThat(Asked.faults(UNCERTAINTY, ask(input("x", 1, 1, "student", ", 'dof': 0.5"), "x", "")))
                .containsExactly("/inputs/0/dof");
        assertThat(Asked.faults(UNCERTAINTY, ask(x, "x", ", 'draws': 1, 'coverage': 1, 'seed': 1e300")))
                .containsExactly("/draws", "/seed", "/coverage");
        assertThat(Asked.faults(UNCERTAINTY, "{}")).containsExactly("/inputs", "/model");
    }
}
