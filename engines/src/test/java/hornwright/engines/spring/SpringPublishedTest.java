package hornwright.engines.spring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.engines.Ref;
import hornwright.engines.spring.Section.Flat;
import hornwright.engines.spring.Section.Round;
import hornwright.engines.spring.SpringInput.Bend;
import hornwright.engines.spring.SpringInput.Model;
import org.junit.jupiter.api.Test;

class SpringPublishedTest {
    private static final double[] LOADS = {0.001, 0.1, 0.375, 1, 2, 5, 10, 50};

    private static String word(double load) {
        return load == Math.rint(load) ? String.valueOf((long) load) : String.valueOf(load);
    }

    private static SpringResult bent(Section section, double length, double deflection, Model model) {
        return Spring.reckon(
                new SpringInput(section, 200e9, length, new Bend.To(deflection), model, 0.008, 0.03, 2000e6));
    }

    @Test
    void small_deflections_follow_the_textbook() {
        Ref ref = Ref.read("spring/beam");
        SpringResult needle = bent(new Round(0.001), 0.04, 0.005, Model.LINEAR);
        ref.check("needle_rate_N_per_mm", needle.rate(), 1e3);
        ref.check("needle_force_N", needle.force(), 1);
        ref.check("needle_stress_MPa", needle.stress(), 1e6);
        SpringResult flat = bent(new Flat(0.004, 0.0003), 0.03, 0.003, Model.LINEAR);
        ref.check("flat_rate_N_per_mm", flat.rate(), 1e3);
        ref.check("flat_force_N", flat.force(), 1);
        ref.check("flat_stress_MPa", flat.stress(), 1e6);
        assertThat(flat.stressShare()).isCloseTo(0.15, within(1e-12));
        assertThat(flat.torque()).isCloseTo(0.6 * 0.008, within(1e-15));
        assertThat(flat.forceAtPad()).isCloseTo(0.16, within(1e-12));
    }

    @Test
    void large_deflections_follow_the_elliptic_integrals() {
        Ref ref = Ref.read("spring/elastica");
        for (double load : LOADS) {
            Elastica beam = Elastica.under(load);
            ref.check("deflection_" + word(load), beam.deflection(), 1);
            ref.check("reach_" + word(load), beam.reach(), 1);
            ref.check("angle_" + word(load), beam.tipAngle(), 1);
            ref.check("rate_" + word(load), beam.rate(), 1);
        }
    }

    @Test
    void a_deflection_finds_the_load_that_makes_it() {
        Ref ref = Ref.read("spring/elastica");
        for (double load : LOADS) {
            double found =
                    Elastica.bentTo(ref.number("deflection_" + word(load))).load();
            assertThat(found).isCloseTo(load, within(1e-10 * load));
        }
    }

    @Test
    void spring_wire_is_as_strong_as_its_standard_asks() {
        Ref ref = Ref.read("spring/wire");
        ref.check("strength_0.020in_MPa", MusicWire.strength(0.020 * 0.0254), 1e6);
        ref.check("strength_0.010in_MPa", MusicWire.strength(0.010 * 0.0254), 1e6);
        ref.check("strength_0.063in_MPa", MusicWire.strength(0.063 * 0.0254), 1e6);
        ref.check("fit_0.020in_MPa", MusicWire.strength(0.020 * 0.0254), 1e6);
        assertThat(MusicWire.strength(0.002)).isNaN();
        assertThat(MusicWire.strength(0.0001)).isNaN();
    }
}
