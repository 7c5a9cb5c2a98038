package hornwright.engines.leak;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.engines.Ref;
import hornwright.engines.leak.Opening.Decay;
import hornwright.engines.leak.Opening.Orifice;
import hornwright.engines.leak.Opening.Slot;
import hornwright.engines.leak.Opening.Slots;
import java.util.List;
import java.util.Random;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

class LeakTest {
    private static final RoomAir TABLE_AIR = new RoomAir(1.204, 1.813e-5);
    private static final RoomAir AIR = RoomAir.at(293.15);

    private static LeakResult slot(double gapMm, double loss) {
        return Leak.reckon(new LeakInput(one(0.06, gapMm / 1000, 0.0015), 1000, loss, TABLE_AIR));
    }

    private static Slots one(double arc, double gap, double width) {
        return new Slots(List.of(new Slot(arc, gap, width)));
    }

    @Test
    void a_slot_flows_as_between_plates() {
        Ref ref = Ref.read("leak/slot");
        ref.check("laminar_mL_per_s", slot(0.05, 0).flow(), 1e-6);
        ref.check("laminar_speed_m_per_s", slot(0.05, 0).speed(), 1);
        ref.check("laminar_reynolds", slot(0.05, 0).reynolds(), 1);
        ref.check("with_loss_mL_per_s", slot(0.05, 1.5).flow(), 1e-6);
        ref.check("with_loss_speed_m_per_s", slot(0.05, 1.5).speed(), 1);
        ref.check("with_loss_0.1mm_speed_m_per_s", slot(0.1, 1.5).speed(), 1);
        ref.check("with_loss_0.2mm_speed_m_per_s", slot(0.2, 1.5).speed(), 1);
    }

    @Test
    void a_sharp_edged_hole_flows_as_published() {
        LeakResult hole = Leak.reckon(new LeakInput(new Orifice(1e-3, 0.61), 1000, 1.5, TABLE_AIR));
        Ref.read("leak/orifice").check("flow_mL_per_s", hole.flow(), 1e-6);
        assertThat(hole.equivalentHole()).isCloseTo(1e-3, within(1e-15));
    }

    @Test
    void air_agrees_with_the_tables() {
        Ref ref = Ref.read("leak/air");
        ref.check("viscosity_0degC_uPa_s", RoomAir.at(273.15).viscosity(), 1e-6);
        ref.check("viscosity_20degC_uPa_s", RoomAir.at(293.15).viscosity(), 1e-6);
        ref.check("viscosity_40degC_uPa_s", RoomAir.at(313.15).viscosity(), 1e-6);
        ref.check("viscosity_288.15K_uPa_s", RoomAir.at(288.15).viscosity(), 1e-6);
        ref.check("kinematic_20degC_mm2_per_s", AIR.viscosity() / AIR.density(), 1e-6);
        RoomAir cold = RoomAir.at(273.15);
        ref.check("kinematic_0degC_mm2_per_s", cold.viscosity() / cold.density(), 1e-6);
    }

    @Test
    void the_pressure_balance_closes_on_what_came_out() {
        Random random = new Random(7);
        for (int i = 0; i < 2000; i++) {
            double gap = 1e-6 * Math.pow(10, 3 * random.nextDouble());
            double width = 2e-3 * random.nextDouble();
            double loss = 0.1 + 2 * random.nextDouble();
            double pressure = 10 + 4000 * random.nextDouble();
            double v = Leak.slotSpeed(gap, width, pressure, loss, AIR);
            double balance = 12 * AIR.viscosity() * width * v / (gap * gap) + loss * AIR.density() * v * v / 2;
            assertThat(balance).isCloseTo(pressure, Percentage.withPercentage(1e-9));
        }
    }

    @Test
    void a_narrow_gap_leaks_as_its_cube_and_a_wide_one_as_its_width() {
        double narrow = slot(0.002, 1.5).flow() / slot(0.001, 1.5).flow();
        double wide = slot(8, 1.5).flow() / slot(4, 1.5).flow();
        assertThat(narrow).isCloseTo(8, within(0.01));
        assertThat(wide).isCloseTo(2, within(0.01));
    }

    @Test
    void the_equivalent_hole_lets_as_much_through_at_the_same_pressure() {
        Random random = new Random(11);
        for (int i = 0; i < 500; i++) {
            Slots slots = one(0.1 * random.nextDouble(), 3e-4 * random.nextDouble(), 1e-3);
            LeakInput leak = new LeakInput(slots, 100 + 3000 * random.nextDouble(), 1.5, AIR);
            LeakResult through = Leak.reckon(leak);
            Orifice hole = new Orifice(through.equivalentHole(), Leak.SHARP_EDGE);
            LeakResult same = Leak.reckon(new LeakInput(hole, leak.pressure(), 1.5, AIR));
            assertThat(same.flow()).isCloseTo(through.flow(), Percentage.withPercentage(1e-9));
        }
    }

    @Test
    void slots_side_by_side_add() {
        Slot a = new Slot(0.02, 1e-4, 1e-3);
        Slot b = new Slot(0.03, 5e-5, 2e-3);
        double sum = flow(new Slots(List.of(a))) + flow(new Slots(List.of(b)));
        assertThat(flow(new Slots(List.of(a, b)))).isCloseTo(sum, Percentage.withPercentage(1e-12));
    }

    private static double flow(Opening opening) {
        return Leak.reckon(new LeakInput(opening, 1000, 1.5, AIR)).flow();
    }

    @Test
    void a_shut_slot_leaks_nothing() {
        assertThat(slot(0, 1.5)).isEqualTo(new LeakResult(0, 0, 0, 0));
    }

    /** Second method: the volume is emptied in small steps of mass, not by the closed square-root law. */
    @Test
    void a_volume_emptied_step_by_step_gives_back_its_hole() {
        double diameter = 0.7e-3;
        double volume = 1.2e-3;
        double pressure = 2000;
        double seconds = 0;
        double step = 1e-6;
        Orifice hole = new Orifice(diameter, Leak.SHARP_EDGE);
        while (pressure > 800) {
            double middle = pressure - fall(hole, volume, pressure) * step / 2;
            pressure -= fall(hole, volume, middle) * step;
            seconds += step;
        }
        LeakInput seen = new LeakInput(new Decay(volume, 2000, pressure, seconds), 1000, 1.5, AIR);
        assertThat(Leak.reckon(seen).equivalentHole()).isCloseTo(diameter, Percentage.withPercentage(1e-6));
    }

    private static double fall(Orifice hole, double volume, double pressure) {
        double out = Leak.reckon(new LeakInput(hole, pressure, 0, AIR)).flow();
        return out / volume * RoomAir.PRESSURE;
    }

    @Test
    void a_faster_fall_means_a_larger_hole() {
        assertThat(Leak.reckon(new LeakInput(new Decay(1e-3, 2000, 1000, 2), 1000, 0, AIR))
                        .equivalentHole())
                .isGreaterThan(Leak.reckon(new LeakInput(new Decay(1e-3, 2000, 1000, 4), 1000, 0, AIR))
                        .equivalentHole());
    }
}
