package hornwright.desk.reckon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

class SpringReckonTest {
    private static final Engine SPRING = new SpringReckon();
    private static final String NEEDLE = "{'kind': 'needle', 'modulus_GPa': 200, 'diameter_mm': 1.0, 'length_mm': 40, ";
    private static final String ARMS = ", 'cradle_arm_mm': 8, 'pad_arm_mm': 30";

    /** Euler and Bernoulli by hand: k = 0.460194 N/mm, F = 2.300971 N, stress 937.5 MPa. */
    @Test
    void a_needle_in_proportion_follows_the_textbook() {
        JsonNode out =
                Asked.out(SPRING, NEEDLE + "'deflection_mm': 5, 'model': 'linear', 'strength_MPa': 1875" + ARMS + "}");
        assertThat(out.get("rate_N_per_mm").doubleValue()).isCloseTo(0.460194, within(1e-6));
        assertThat(out.get("force_N").doubleValue()).isCloseTo(2.300971, within(1e-6));
        assertThat(out.get("stress_MPa").doubleValue()).isCloseTo(937.5, within(1e-9));
        assertThat(out.get("stress_share").doubleValue()).isCloseTo(0.5, within(1e-12));
        assertThat(out.get("torque_Nmm").doubleValue()).isCloseTo(8 * 2.300971, within(1e-5));
        assertThat(out.get("force_at_pad_N").doubleValue()).isCloseTo(8 * 2.300971 / 30, within(1e-6));
    }

    /** Under PL²/EI = 0.375 the tip moves 0.12304929 of the length: Bisshopp and Drucker 1945. */
    @Test
    void a_force_bends_it_by_the_elliptic_integrals() {
        JsonNode out = Asked.out(SPRING, NEEDLE + "'force_N': 2.3009711818284615" + ARMS + "}");
        assertThat(out.get("deflection_mm").doubleValue()).isCloseTo(40 * 0.1230492910348231, within(1e-9));
        assertThat(out.get("linear_error_share").doubleValue())
                .isCloseTo(3 * 0.1230492910348231 / 0.375 - 1, within(1e-9));
        assertThat(out.get("stress_share").isNull()).isTrue();
    }

    @Test
    void a_flat_spring_has_its_own_section() {
        String flat = "{'kind': 'flat', 'modulus_GPa': 200, 'width_mm': 4, 'thickness_mm': 0.3, 'length_mm': 30, "
                + "'deflection_mm': 3, 'model': 'linear'" + ARMS + "}";
        assertThat(Asked.number(SPRING, flat, "/force_N")).isCloseTo(0.6, within(1e-12));
        assertThat(Asked.number(SPRING, flat, "/stress_MPa")).isCloseTo(300, within(1e-9));
    }

    @Test
    void every_fault_is_told_at_its_place() {
        assertThat(Asked.faults(SPRING, NEEDLE + "'deflection_mm': 40" + ARMS + "}"))
                .containsExactly("/deflection_mm");
        assertThat(Asked.faults(SPRING, NEEDLE + "'deflection_mm': 4, 'force_N': 1" + ARMS + "}"))
                .containsExactly("");
        assertThat(Asked.faults(SPRING, NEEDLE + "'width_mm': 4, 'force_N': 1" + ARMS + "}"))
                .containsExactly("/width_mm");
        assertThat(Asked.faults(SPRING, NEEDLE + "'force_N': 60, 'model': 'linear'" + ARMS + "}"))
                .containsExactly("/force_N");
        assertThat(Asked.faults(SPRING, "{'kind': 'coil', 'modulus_GPa': 0, 'length_mm': 40, 'force_N': 1}"))
                .containsExactly("/kind", "/diameter_mm", "/modulus_GPa", "/cradle_arm_mm", "/pad_arm_mm");
    }
}
