package hornwright.engines.spring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.engines.spring.Section.Round;
import hornwright.engines.spring.SpringInput.Bend;
import hornwright.engines.spring.SpringInput.Model;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Shooting: the curve is integrated along its arc by Runge and Kutta, the root's curvature found by halving. */
class SpringSecondMethodTest {
    private static final int STEPS = 2000;

    /** State: angle, curvature, way along, way across; in units of the length, under load P L²/EI. */
    private static double[] slope(double[] state, double load) {
        return new double[] {state[1], -load * Math.cos(state[0]), Math.cos(state[0]), Math.sin(state[0])};
    }

    private static double[] along(double[] state, double[] slope, double step) {
        double[] moved = new double[4];
        for (int i = 0; i < 4; i++) {
            moved[i] = state[i] + step * slope[i];
        }
        return moved;
    }

    private static double[] tip(double rootCurvature, double load) {
        double[] state = {0, rootCurvature, 0, 0};
        double h = 1.0 / STEPS;
        for (int i = 0; i < STEPS; i++) {
            double[] k1 = slope(state, load);
            double[] k2 = slope(along(state, k1, h / 2), load);
            double[] k3 = slope(along(state, k2, h / 2), load);
            double[] k4 = slope(along(state, k3, h), load);
            for (int j = 0; j < 4; j++) {
                state[j] += h / 6 * (k1[j] + 2 * k2[j] + 2 * k3[j] + k4[j]);
            }
        }
        return state;
    }

    /** The tip under this load, with the root's curvature in place of the tip's, which is none. */
    private static double[] shot(double load) {
        double low = 0;
        double high = Math.sqrt(2 * load);
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (tip(middle, load)[1] > 0) {
                high = middle;
            } else {
                low = middle;
            }
        }
        double[] found = tip(low, load);
        found[1] = low;
        return found;
    }

    @Test
    void shooting_along_the_arc_finds_the_same_curve() {
        Random random = new Random(5);
        for (int trial = 0; trial < 12; trial++) {
            double load = Math.pow(10, -2 + 3 * random.nextDouble());
            double[] tip = shot(load);
            Elastica beam = Elastica.under(load);
            assertThat(beam.deflection()).isCloseTo(tip[3], within(1e-9));
            assertThat(beam.reach()).isCloseTo(tip[2], within(1e-9));
            assertThat(beam.tipAngle()).isCloseTo(tip[0], within(1e-9));
        }
    }

    @Test
    void shooting_finds_the_same_force_stress_and_rate_of_a_needle() {
        double unit = 200e9 * Math.PI * Math.pow(0.0011, 4) / 64 / (0.035 * 0.035);
        double force = 4.2;
        double[] tip = shot(force / unit);
        double[] more = shot((force + 1e-3) / unit);
        double[] less = shot((force - 1e-3) / unit);
        SpringInput needle = new SpringInput(
                new Round(0.0011), 200e9, 0.035, new Bend.To(0.035 * tip[3]), Model.LARGE, 0.008, 0.03, null);
        SpringResult bent = Spring.reckon(needle);
        assertThat(bent.force()).isCloseTo(force, within(1e-8));
        double stress = 0.00055 * 200e9 * tip[1] / 0.035;
        assertThat(bent.stress()).isCloseTo(stress, within(1e-8 * stress));
        double rate = 2e-3 / (0.035 * (more[3] - less[3]));
        assertThat(bent.rate()).isCloseTo(rate, within(1e-6 * rate));
        assertThat(bent.stressShare()).isNull();
    }
}
