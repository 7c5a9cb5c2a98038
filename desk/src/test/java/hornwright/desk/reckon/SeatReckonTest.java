package hornwright.desk.reckon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

class SeatReckonTest {
    private static final Engine SEAT = new SeatReckon();
    private static final String LEVEL = "'rim': {'radius_mm': 9, 'profile_um': []}, 'pad': {'stiffness_MPa': 0.2}, ";
    private static final String WARPED =
            "'rim': {'radius_mm': 9, 'profile_um': [{'cos': 2, 'amplitude': 50}]}, 'pad': {'stiffness_MPa': 0.2}, ";
    private static final String AIR = ", 'seat_width_mm': 1.2, 'pressure_kPa': 1.0}";

    /** Full closing of a second harmonic takes 2π R κ A: 0.5654867 N, worked out apart from this program. */
    @Test
    void a_loose_disc_answers_with_force_descent_and_tilts() {
        JsonNode out = Asked.out(SEAT, "{" + WARPED + "'arm_mm': null, 'force_N': 0.18" + AIR);
        assertThat(out.get("sealing_force_N").doubleValue()).isCloseTo(0.5654867, within(1e-7));
        assertThat(out.get("contact_fraction").doubleValue()).isCloseTo(0.5, within(1e-6));
        assertThat(out.get("largest_gap_um").doubleValue()).isCloseTo(50, within(1e-6));
        assertThat(out.get("open_area_mm2").doubleValue()).isCloseTo(0.9, within(1e-6));
        assertThat(out.get("largest_gap_at_deg").doubleValue()).isCloseTo(90, within(1e-6));
        assertThat(out.get("rotation_mrad").isNull()).isTrue();
        assertThat(out.get("sealing_torque_Nmm").isNull()).isTrue();
        assertThat(out.get("tilt_front_mrad").doubleValue()).isCloseTo(0, within(1e-9));
        assertThat(out.get("descent_um").doubleValue()).isCloseTo(0, within(1e-4));
    }

    /** A level pad: torque = κ 2π R (L² + R²/2) q, and the force is that of the mean compression L q. */
    @Test
    void a_hinged_pad_turns_as_its_ring_of_springs_says() {
        JsonNode out = Asked.out(SEAT, "{" + LEVEL + "'arm_mm': 30, 'torque_Nmm': 10" + AIR);
        double rate = 0.2e6 * 2 * Math.PI * 0.009 * (0.03 * 0.03 + 0.009 * 0.009 / 2);
        double rotation = 0.010 / rate;
        assertThat(out.get("rotation_mrad").doubleValue()).isCloseTo(1e3 * rotation, within(1e-9));
        assertThat(out.get("force_N").doubleValue())
                .isCloseTo(0.2e6 * 2 * Math.PI * 0.009 * 0.03 * rotation, within(1e-9));
        assertThat(out.has("descent_um")).isFalse();
        assertThat(out.get("leak_mL_per_s").doubleValue()).isZero();
    }

    @Test
    void a_proud_pad_touches_at_the_back_first() {
        String proud = "{" + LEVEL + "'arm_mm': 30, 'torque_Nmm': 1, 'height_error_um': 100" + AIR;
        assertThat(Asked.number(SEAT, proud, "/first_touch_deg")).isCloseTo(180, within(1e-6));
        String shy = proud.replace("'height_error_um': 100", "'height_error_um': -100");
        assertThat(Asked.number(SEAT, shy, "/first_touch_deg")).isZero();
    }

    @Test
    void the_same_rim_as_waves_and_as_points_seats_alike() {
        StringBuilder points = new StringBuilder();
        for (int i = 0; i < 720; i++) {
            double degrees = i / 2.0;
            points.append(i == 0 ? "" : ",")
                    .append("{'angle_deg': " + degrees + ", 'height_um': " + 50 * Math.cos(2 * Math.toRadians(degrees))
                            + "}");
        }
        String load = "'arm_mm': 30, 'torque_Nmm': 5" + AIR;
        String drawn =
                "{'rim': {'radius_mm': 9, 'profile_um': [" + points + "]}, 'pad': {'stiffness_MPa': 0.2}, " + load;
        JsonNode waves = Asked.out(SEAT, "{" + WARPED + load);
        JsonNode dots = Asked.out(SEAT, drawn);
        assertThat(dots.get("gap_cubed_um3").doubleValue()
                        / waves.get("gap_cubed_um3").doubleValue())
                .isCloseTo(1, within(1e-3));
        assertThat(dots.get("rotation_mrad").doubleValue())
                .isCloseTo(waves.get("rotation_mrad").doubleValue(), within(1e-3));
    }

    @Test
    void a_face_like_the_rim_counts_like_the_rim() {
        String load = "'arm_mm': 30, 'torque_Nmm': 5" + AIR;
        String face = "{'rim': {'radius_mm': 9, 'profile_um': []}, "
                + "'pad': {'stiffness_MPa': 0.2, 'profile_um': [{'cos': 2, 'amplitude': 50}]}, " + load;
        assertThat(Asked.out(SEAT, face)).isEqualTo(Asked.out(SEAT, "{" + WARPED + load));
    }

    @Test
    void a_second_line_stiffens_a_pad_only_beyond_its_depth() {
        String load = ", 'arm_mm': 30, 'torque_Nmm': 20" + AIR;
        String rim = "{'rim': {'radius_mm': 9, 'profile_um': []}, 'pad': {'stiffness_MPa': 0.2";
        double one = Asked.number(SEAT, rim + "}" + load, "/rotation_mrad");
        String two = ", 'felt_stiffness_MPa': 2, 'felt_from_um': ";
        assertThat(Asked.number(SEAT, rim + two + "20}" + load, "/rotation_mrad"))
                .isLessThan(one / 1.5);
        assertThat(Asked.number(SEAT, rim + two + "500}" + load, "/rotation_mrad"))
                .isCloseTo(one, within(1e-9));
    }

    @Test
    void every_fault_is_told_at_its_place() {
        assertThat(Asked.faults(SEAT, "{" + LEVEL + "'arm_mm': 8, 'torque_Nmm': 1" + AIR))
                .containsExactly("/arm_mm");
        assertThat(Asked.faults(SEAT, "{" + LEVEL + "'arm_mm': 30, 'force_N': 1" + AIR))
                .containsExactly("/force_N", "/torque_Nmm");
        assertThat(Asked.faults(SEAT, "{" + LEVEL + "'force_N': 1, 'tilt_side_mrad': 2" + AIR))
                .containsExactly("/tilt_side_mrad");
        assertThat(Asked.faults(SEAT, "{'pad': {'stiffness_MPa': 0}, 'force_N': 1" + AIR))
                .containsExactly("/rim", "/pad/stiffness_MPa");
        assertThat(Asked.faults(
                        SEAT,
                        "{'rim': {'radius_mm': 9, 'profile_um': [{'cos': -1, 'amplitude': 5}, {'sin': 2}]},"
                                + " 'pad': {'stiffness_MPa': 0.2, 'felt_from_um': 5}, 'force_N': 1" + AIR))
                .containsExactly("/rim/profile_um/0/cos", "/rim/profile_um/1/amplitude", "/pad/felt_stiffness_MPa");
    }

    @Test
    void points_ascend_in_one_turn_and_are_at_least_eight() {
        String few = "{'rim': {'radius_mm': 9, 'profile_um': [{'angle_deg': 0, 'height_um': 1}, "
                + "{'angle_deg': 0, 'height_um': 1}, {'angle_deg': 360, 'height_um': 1}]}, "
                + "'pad': {'stiffness_MPa': 0.2}, 'force_N': 1" + AIR;
        assertThat(Asked.faults(SEAT, few))
                .containsExactly("/rim/profile_um/2/angle_deg", "/rim/profile_um", "/rim/profile_um/1");
    }
}
