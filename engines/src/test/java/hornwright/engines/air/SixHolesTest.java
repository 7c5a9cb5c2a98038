package hornwright.engines.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.engines.Ref;
import hornwright.engines.air.AirInput.Hole;
import hornwright.engines.air.AirResult.Peak;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A cone with six holes, every fingering against an independent reckoning. */
class SixHolesTest {
    private static final List<String> NAMES = List.of("1-6", "2-6", "3-6", "4-6", "5-6", "6", "none");
    private final Ref ref = Ref.read("air/six-holes");

    @Test
    void every_fingering_rings_where_it_should() {
        for (int first = 1; first <= 7; first++) {
            String name = NAMES.get(first - 1);
            List<Peak> peaks = Horns.peaks(Horns.six(first));
            for (int n = 1; n <= (first <= 3 ? 2 : 3); n++) {
                double expected = ref.number("f_" + name + "_" + n);
                assertThat(peaks.get(n - 1).frequency()).as(name + n).isCloseTo(expected, within(0.1));
                ref.check("m_" + name + "_" + n, peaks.get(n - 1).magnitude(), 1e6);
            }
        }
    }

    @Test
    void pads_move_the_pitch_as_reckoned_elsewhere() {
        moved("only6_own_0.5_1", 6, 0.5, 1, 5);
        moved("only6_own_0.5_2", 6, 0.5, 2, 5);
        moved("only6_own_1.5_1", 6, 1.5, 1, 5);
        moved("only6_own_1.5_2", 6, 1.5, 2, 5);
        moved("4-6_pad4_0.5_1", 4, 0.5, 1, 3);
        moved("4-6_pad4_0.5_2", 4, 0.5, 2, 3);
        moved("4-6_pad4_1.5_1", 4, 1.5, 1, 3);
        moved("4-6_all_0.75_1", 4, 0.75, 1, 3, 4, 5);
        moved("4-6_all_1.25_2", 4, 1.25, 2, 3, 4, 5);
        moved("1-6_all_0.5_1", 1, 0.5, 1, 0, 1, 2, 3, 4, 5);
        moved("1-6_all_0.5_2", 1, 0.5, 2, 0, 1, 2, 3, 4, 5);
    }

    private void moved(String key, int first, double factor, int peak, int... pads) {
        AirInput before = Horns.six(first);
        AirInput after = before.withHoles(Horns.raised(before.holes(), factor, pads));
        assertThat(Horns.cents(Horns.peak(before, peak), Horns.peak(after, peak)))
                .as(key)
                .isCloseTo(ref.number(key), within(0.06));
    }

    @Test
    void closing_a_pad_costs_more_than_opening_it_gains() {
        AirInput before = Horns.six(4);
        double f = Horns.peak(before, 1);
        double half = Horns.cents(f, Horns.peak(before.withHoles(Horns.raised(before.holes(), 0.5, 3)), 1));
        double more = Horns.cents(f, Horns.peak(before.withHoles(Horns.raised(before.holes(), 1.5, 3)), 1));
        assertThat(-half).isGreaterThan(2 * more);
    }

    @Test
    void pads_that_stand_into_their_chimneys_sharpen_the_lowest_note_a_little() {
        AirInput before = Horns.six(7);
        List<Hole> deeper = before.holes().stream()
                .map(h -> new Hole(
                        h.at(),
                        h.radius(),
                        h.chimney(),
                        h.rimWall(),
                        new AirInput.Pad(
                                Horns.there(h.pad()).radius(),
                                Horns.there(h.pad()).height(),
                                0.5e-3)))
                .toList();
        for (int n = 1; n <= 3; n++) {
            double cents = Horns.cents(Horns.peak(before, n), Horns.peak(before.withHoles(deeper), n));
            assertThat(cents).isCloseTo(0.5, within(0.1));
        }
    }

    @Test
    void a_leak_takes_the_first_peak_down_and_up_as_reckoned_elsewhere() {
        Ref leaks = Ref.read("air/leaks");
        AirInput sound = Horns.six(7);
        Peak before = Horns.peaks(sound).getFirst();
        for (String radius : List.of("0.25", "0.50", "1.00", "2.00")) {
            Peak after = Horns.peaks(Horns.leaking(sound, 370, Double.parseDouble(radius), 1))
                    .getFirst();
            double cents = Horns.cents(before.frequency(), after.frequency());
            assertThat(cents).isCloseTo(leaks.number("cents_" + radius), within(0.6));
            double dB = 20 * Math.log10(after.magnitude() / before.magnitude());
            assertThat(dB).as(radius).isCloseTo(leaks.number("dB_" + radius), within(0.06));
        }
        Peak second = Horns.peaks(sound).get(1);
        Peak hardlyTouched = Horns.peaks(Horns.leaking(sound, 370, 0.25, 1)).get(1);
        leaks.check("dB2_0.25", 20 * Math.log10(hardlyTouched.magnitude() / second.magnitude()), 1);
        Peak pin = Horns.peaks(Horns.leaking(sound, 370, 0.1, 1)).getFirst();
        leaks.check("dB_0.10", 20 * Math.log10(pin.magnitude() / before.magnitude()), 1);
    }
}
