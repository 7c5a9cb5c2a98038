package hornwright.engines.seat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.engines.leak.Leak;
import hornwright.engines.leak.RoomAir;
import hornwright.engines.seat.Profile.Harmonic;
import hornwright.engines.seat.Profile.Harmonics;
import hornwright.engines.seat.Profile.Point;
import hornwright.engines.seat.Profile.Points;
import hornwright.engines.seat.SeatInput.Mount.Free;
import hornwright.engines.seat.SeatInput.Mount.Hinged;
import hornwright.engines.seat.SeatResult.Position.Sunk;
import hornwright.engines.seat.SeatResult.Position.Turned;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** The same seat on a plain grid of many angles with a bisection: no Newton, no crossings, no Gauss. */
class SeatSecondMethodTest {
    private static final int GRID = 20_000;
    private static final double R = 0.01;
    private static final double ARM = 0.025;
    private static final PadStiffness PAD = new PadStiffness(1.5e5, 8e-5, 4e5);

    private final double[] profile = new double[GRID];
    private final double[] cos = new double[GRID];
    private final double[] sin = new double[GRID];

    private void lay(Profile rim) {
        for (int i = 0; i < GRID; i++) {
            double angle = 2 * Math.PI * (i + 0.5) / GRID;
            cos[i] = Math.cos(angle);
            sin[i] = Math.sin(angle);
            profile[i] = height(rim, angle);
        }
    }

    private static double height(Profile rim, double angle) {
        return switch (rim) {
            case Harmonics waves -> {
                double sum = 0;
                for (Harmonic term : waves.terms()) {
                    sum += term.cos() * Math.cos(term.order() * angle) + term.sin() * Math.sin(term.order() * angle);
                }
                yield sum;
            }
            case Points points -> between(points.points(), angle);
        };
    }

    private static double between(List<Point> points, double angle) {
        Point last = points.getLast();
        Point left = new Point(last.angle() - 2 * Math.PI, last.height());
        for (Point right : points) {
            if (angle <= right.angle()) {
                return mix(left, right, angle);
            }
            left = right;
        }
        Point first = points.getFirst();
        return mix(left, new Point(first.angle() + 2 * Math.PI, first.height()), angle);
    }

    private static double mix(Point left, Point right, double angle) {
        double share = (angle - left.angle()) / (right.angle() - left.angle());
        return left.height() * (1 - share) + right.height() * share;
    }

    private double sum(double rise, double front, double side, DoubleUnaryOperator of, double[] times) {
        double sum = 0;
        for (int i = 0; i < GRID; i++) {
            sum += of.applyAsDouble(rise + front * cos[i] + side * sin[i] + profile[i]) * times[i];
        }
        return sum * 2 * Math.PI / GRID;
    }

    private double torque(double q, double error, double front, double side) {
        double[] lever = new double[GRID];
        for (int i = 0; i < GRID; i++) {
            lever[i] = (ARM + R * cos[i]) * R;
        }
        return sum(ARM * q + error, R * (q + front), R * side, PAD::pressure, lever);
    }

    private static double leakPerAngle(double u) {
        double gap = Math.max(0, -u);
        return gap * R * Leak.slotSpeed(gap, 1.2e-3, 1000, 1.5, RoomAir.at(293.15));
    }

    @Test
    void a_grid_and_a_bisection_find_the_same_hinged_seat() {
        Random random = new Random(21);
        double[] ones = new double[GRID];
        java.util.Arrays.fill(ones, 1);
        for (int trial = 0; trial < 25; trial++) {
            Profile rim = SeatPropertyTest.randomRim(random);
            lay(rim);
            double error = 8e-5 * random.nextGaussian();
            double front = 3e-3 * random.nextGaussian();
            double side = 3e-3 * random.nextGaussian();
            double torque = 0.001 + 0.01 * random.nextDouble();
            double low = -0.1;
            double high = 0.1;
            for (int i = 0; i < 50; i++) {
                double middle = (low + high) / 2;
                if (torque(middle, error, front, side) < torque) {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            Hinged mount = new Hinged(ARM, error, front, side, torque);
            SeatResult seat = Seat.reckon(new SeatInput(R, rim, Profile.FLAT, PAD, mount, 1.2e-3, 1000));
            assertThat(((Turned) seat.position()).rotation()).isCloseTo(low, within(1e-8));
            double rise = ARM * low + error;
            double leak = sum(rise, R * (low + front), R * side, SeatSecondMethodTest::leakPerAngle, ones);
            assertThat(seat.leak()).isCloseTo(leak, within(1e-4 * leak + 1e-13));
            double cubed = sum(rise, R * (low + front), R * side, u -> Math.pow(Math.max(0, -u), 3), ones);
            assertThat(seat.gapCubed()).isCloseTo(cubed, within(1e-4 * cubed + 1e-20));
            double touching = sum(rise, R * (low + front), R * side, u -> u > 0 ? 1 : 0, ones) / (2 * Math.PI);
            assertThat(seat.contactFraction()).isCloseTo(touching, within(1e-3));
        }
    }

    @Test
    void on_a_grid_the_loose_disc_carries_its_force_without_a_moment() {
        Random random = new Random(22);
        double[] ones = new double[GRID];
        java.util.Arrays.fill(ones, 1);
        for (int trial = 0; trial < 40; trial++) {
            Profile rim = SeatPropertyTest.randomRim(random);
            lay(rim);
            double force = 0.01 + random.nextDouble();
            SeatResult seat = Seat.reckon(new SeatInput(R, rim, Profile.FLAT, PAD, new Free(force), 1.2e-3, 1000));
            Sunk sunk = (Sunk) seat.position();
            double front = R * sunk.tiltFront();
            double side = R * sunk.tiltSide();
            assertThat(R * sum(sunk.descent(), front, side, PAD::pressure, ones))
                    .isCloseTo(force, Percentage.withPercentage(1e-3));
            assertThat(R * sum(sunk.descent(), front, side, PAD::pressure, cos)).isCloseTo(0, within(1e-5 * force));
            assertThat(R * sum(sunk.descent(), front, side, PAD::pressure, sin)).isCloseTo(0, within(1e-5 * force));
        }
    }
}
