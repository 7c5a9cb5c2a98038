package hornwright.engines.action;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The same key in angles, by Runge and Kutta with one small step throughout: no closed flights, no located events. */
class ActionSecondMethodTest {
    private static final double STEP = 2e-7;

    @Test
    void small_steps_in_angles_find_the_same_motion() {
        Random random = new Random(3);
        for (int trial = 0; trial < 6; trial++) {
            double friction = trial % 2 == 0 ? 0 : 1e-3 * random.nextDouble();
            double exponent = 1 + random.nextDouble();
            double stiffness = (10 + 40 * random.nextDouble()) / Math.pow(2e-4, exponent);
            Bumper bumper = Bumper.givingBack(stiffness, exponent, 0.3 + 0.5 * random.nextDouble(), 0.3);
            ActionInput some = new ActionInput(
                    1e-6 + 3e-6 * random.nextDouble(),
                    0.008 + 0.01 * random.nextDouble(),
                    0.03 * random.nextDouble(),
                    0.003 + 0.003 * random.nextDouble(),
                    0.025,
                    0.012,
                    null,
                    bumper,
                    friction);
            ActionResult exact = Action.reckon(some);
            Slow slow = new Slow(some);
            slow.run(0.35);
            assertThat(exact.opening()).isCloseTo(slow.opening, within(1e-6));
            assertThat(exact.impactSpeed()).isCloseTo(slow.impact, within(1e-4));
            int compared = Math.min(3, exact.rebounds().size());
            assertThat(compared).isPositive();
            for (int i = 0; i < compared; i++) {
                assertThat(exact.rebounds().get(i).height())
                        .isCloseTo(slow.heights.get(i)[0], within(2e-7));
                assertThat(exact.rebounds().get(i).at()).isCloseTo(slow.heights.get(i)[1], within(2e-6));
            }
            assertThat(Objects.requireNonNull(exact.settled())).isCloseTo(slow.settled(), within(3e-6));
        }
    }

    private static final class Slow {
        private final ActionInput key;
        private final double closing;
        private double opening = Double.NaN;
        private double impact;
        private final List<double[]> heights = new ArrayList<>();
        private final List<Double> angles = new ArrayList<>();

        Slow(ActionInput key) {
            this.key = key;
            this.closing = key.travel() / key.cupArm();
        }

        private double acceleration(double q, double w, double way) {
            double arm = key.stopArm();
            double deep = arm * (q - closing);
            double push = 0;
            if (deep > 0) {
                Bumper bumper = key.bumper();
                push = bumper.stiffness() * Math.pow(deep, bumper.exponent()) * (1 + bumper.damping() * arm * w);
            }
            return (key.torque() - key.rate() * q - way * key.friction() - arm * Math.max(0, push)) / key.inertia();
        }

        private void run(double seconds) {
            double q = 0;
            double w = 0;
            for (double t = 0; t < seconds; t += STEP) {
                double way = w == 0 ? 1 : Math.signum(w);
                double a1 = acceleration(q, w, way);
                double a2 = acceleration(q + STEP / 2 * w, w + STEP / 2 * a1, way);
                double a3 = acceleration(q + STEP / 2 * (w + STEP / 2 * a1), w + STEP / 2 * a2, way);
                double a4 = acceleration(q + STEP * (w + STEP / 2 * a2), w + STEP * a3, way);
                double moved = q + STEP * (w + STEP / 6 * (a1 + a2 + a3));
                double faster = w + STEP / 6 * (a1 + 2 * a2 + 2 * a3 + a4);
                if (Double.isNaN(opening) && moved >= closing) {
                    opening = t + STEP * (closing - q) / (moved - q);
                    impact = key.stopArm() * faster;
                }
                if (w < 0 && faster >= 0 && moved < closing) {
                    heights.add(new double[] {key.cupArm() * (closing - moved), t});
                }
                boolean held = w * faster <= 0
                        && w != 0
                        && Math.abs(acceleration(moved, 0, 0)) * key.inertia() <= key.friction();
                q = moved;
                w = held ? 0 : faster;
                angles.add(q);
                if (held) {
                    return;
                }
            }
        }

        private double settled() {
            double rest = angles.getLast();
            int last = angles.size() - 1;
            while (last > 0 && Math.abs(angles.get(last) - rest) * key.cupArm() <= 0.02 * key.travel()) {
                last--;
            }
            return last * STEP;
        }
    }
}
