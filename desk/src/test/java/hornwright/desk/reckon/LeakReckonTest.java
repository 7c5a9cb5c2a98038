package hornwright.desk.reckon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class LeakReckonTest {
    private static final Engine LEAK = new LeakReckon();
    private static final String SLOT = "'slot': {'arc_mm': 60, 'gap_um': 50, 'seat_width_mm': 1.5}";

    /** Plane Poiseuille flow worked out apart from this program: 22.98 mL/s at 1.813e-5 Pa s. */
    @Test
    void a_slot_without_loss_flows_as_between_plates() {
        double flow = Asked.number(LEAK, "{" + SLOT + ", 'pressure_kPa': 1, 'loss': 0}", "/flow_mL_per_s");
        assertThat(flow).isCloseTo(22.98, within(0.02));
    }

    @Test
    void loss_and_room_air_have_their_defaults() {
        String given = "{" + SLOT + ", 'pressure_kPa': 1, 'loss': 1.5, 'air': {'temperature_degC': 20}}";
        assertThat(Asked.out(LEAK, "{" + SLOT + ", 'pressure_kPa': 1}")).isEqualTo(Asked.out(LEAK, given));
    }

    @Test
    void two_slots_side_by_side_leak_twice_as_much() {
        String twice = "{'slots': [ {'arc_mm': 60, 'gap_um': 50, 'seat_width_mm': 1.5},"
                + " {'arc_mm': 60, 'gap_um': 50, 'seat_width_mm': 1.5} ], 'pressure_kPa': 1}";
        assertThat(Asked.number(LEAK, twice, "/flow_mL_per_s"))
                .isCloseTo(2 * Asked.number(LEAK, "{" + SLOT + ", 'pressure_kPa': 1}", "/flow_mL_per_s"), within(1e-9));
    }

    @Test
    void a_sharp_edged_hole_is_its_own_equivalent() {
        String hole = "{'orifice': {'diameter_mm': 1.25}, 'pressure_kPa': 0.7}";
        assertThat(Asked.number(LEAK, hole, "/equivalent_hole_mm")).isCloseTo(1.25, within(1e-12));
    }

    /** A = 2 V (√2000 - √500) / (101325 · 0.61 · √(2/ρ) · t) with ρ = 1.2041 kg/m³: 0.5447 mm across. */
    @Test
    void a_falling_pressure_gives_its_hole() {
        String decay =
                "{'decay': {'volume_mL': 1500, 'from_kPa': 2, 'to_kPa': 0.5, 'seconds': 3.617}, 'pressure_kPa': 1}";
        double area =
                2 * 1.5e-3 * (Math.sqrt(2000) - Math.sqrt(500)) / (101325 * 0.61 * Math.sqrt(2 / 1.20411) * 3.617);
        assertThat(Asked.number(LEAK, decay, "/equivalent_hole_mm"))
                .isCloseTo(1e3 * Math.sqrt(4 * area / Math.PI), within(1e-5));
    }

    @Test
    void every_fault_is_told_at_its_place() {
        assertThat(Asked.faults(LEAK, "{'pressure_kPa': -1}")).containsExactly("", "/pressure_kPa");
        assertThat(Asked.faults(LEAK, "{" + SLOT + ", 'orifice': {'diameter_mm': 0}, 'pressure_kPa': 1}"))
                .containsExactly("", "/orifice/diameter_mm");
        assertThat(Asked.faults(LEAK, "{'slots': [], 'pressure_kPa': 1}")).containsExactly("/slots");
        assertThat(Asked.faults(
                        LEAK,
                        "{'decay': {'volume_mL': 1, 'from_kPa': 1, 'to_kPa': 2, 'seconds': 1}, 'pressure_kPa': 1}"))
                .containsExactly("/decay/to_kPa");
        assertThat(Asked.faults(
                        LEAK,
                        "{'slot': {'arc_mm': 60, 'gap_um': 50, 'seat_width_mm': 0}, 'loss': 0, 'pressure_kPa': 1}"))
                .containsExactly("/slot/seat_width_mm");
        assertThat(Asked.faults(LEAK, "{" + SLOT + ", 'pressure_kPa': 1, 'air': {'temperature_degC': -300}}"))
                .containsExactly("/air/temperature_degC");
    }
}
