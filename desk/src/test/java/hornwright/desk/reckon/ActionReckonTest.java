package hornwright.desk.reckon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

class ActionReckonTest {
    private static final Engine ACTION = new ActionReckon();
    private static final String BUMPER = "'bumper': {'stiffness_N_per_mm_p': 200, 'exponent': 1.5, 'restitution': 0.6,"
            + " 'reference_speed_m_per_s': 0.3}";

    private static String key(String inertia, double torque, double rate, String more) {
        return "{" + inertia + ", 'spring': {'torque_Nmm': " + torque + ", 'rate_Nmm_per_rad': " + rate
                + "}, 'travel_mm': 5, 'cup_arm_mm': 25, 'stop_arm_mm': 12, " + BUMPER + more + "}";
    }

    /** Constant torque T: t = √(2 J φ/T), and the stop point comes with arm · √(2 T φ/J). */
    @Test
    void a_constant_torque_opens_as_constant_acceleration_does() {
        JsonNode out = Asked.out(ACTION, key("'inertia_g_mm2': 2000", 10, 0, ""));
        double angle = 5.0 / 25;
        assertThat(out.get("opening_ms").doubleValue())
                .isCloseTo(1e3 * Math.sqrt(2 * 2e-6 * angle / 0.01), within(1e-9));
        assertThat(out.get("impact_speed_m_per_s").doubleValue())
                .isCloseTo(0.012 * Math.sqrt(2 * 0.01 * angle / 2e-6), within(1e-12));
        assertThat(out.get("touch_N").isNull()).isTrue();
        assertThat(out.get("bounces").booleanValue()).isTrue();
        assertThat(out.at("/rebounds/0/at_ms").doubleValue())
                .isGreaterThan(out.get("opening_ms").doubleValue());
        assertThat(out.get("settled_ms").doubleValue())
                .isGreaterThan(out.at("/rebounds/0/at_ms").doubleValue());
    }

    @Test
    void parts_add_up_to_an_inertia() {
        String parts = "'parts': [ {'mass_g': 3, 'shape': 'disc', 'radius_mm': 12, 'thickness_mm': 3, 'arm_mm': 25},"
                + " {'mass_g': 2, 'shape': 'point', 'arm_mm': 10}, {'mass_g': 3, 'shape': 'wheel', 'radius_mm': 12, 'arm_mm': 25},"
                + " {'mass_g': 4, 'shape': 'bar', 'length_mm': 24, 'arm_mm': 12, 'thickness_mm': 2} ]";
        assertThat(Asked.number(ACTION, key(parts, 12, 20, ""), "/inertia_g_mm2"))
                .isCloseTo(1985.25 + 200 + 2091 + 768, within(1e-9));
    }

    @Test
    void touch_is_torque_and_friction_over_its_arm() {
        String touched = key("'inertia_g_mm2': 2000", 12, 20, ", 'touch_arm_mm': 30, 'friction_Nmm': 1.5");
        assertThat(Asked.number(ACTION, touched, "/touch_N")).isCloseTo(0.45, within(1e-12));
    }

    @Test
    void a_key_that_never_reaches_its_stop_falls_short_with_null() {
        Answer answer = Asked.answer(ACTION, key("'inertia_g_mm2': 2000", 2, 30, ", 'friction_Nmm': 1"));
        assertThat(answer.shortfall()).contains("never reaches its stop");
        assertThat(answer.out().node().get("opening_ms").isNull()).isTrue();
        assertThat(answer.out().node().get("rebounds")).isEmpty();
    }

    @Test
    void a_key_that_swings_for_ever_falls_short_too() {
        Answer answer = Asked.answer(ACTION, key("'inertia_g_mm2': 2000", 5, 40, ""));
        assertThat(answer.shortfall()).contains("never comes to rest");
        assertThat(answer.out().node().get("settled_ms").isNull()).isTrue();
    }

    @Test
    void every_fault_is_told_at_its_place() {
        assertThat(Asked.faults(ACTION, key("'inertia_g_mm2': 2000, 'parts': []", 12, 20, "")))
                .containsExactly("");
        assertThat(Asked.faults(ACTION, key("'parts': []", 12, 20, ""))).containsExactly("/parts");
        assertThat(Asked.faults(ACTION, key("'parts': [{'mass_g': 3, 'shape': 'cone', 'arm_mm': 2}]", 12, 20, "")))
                .contains("/parts/0/shape");
        assertThat(Asked.faults(ACTION, key("'parts': [{'mass_g': 3, 'shape': 'point', 'arm_mm': 0}]", 12, 20, "")))
                .containsExactly("/parts");
        assertThat(Asked.faults(
                        ACTION, key("'inertia_g_mm2': 2000", -12, 20, "").replace("0.6", "1")))
                .containsExactly("/spring/torque_Nmm", "/bumper/restitution");
    }
}
