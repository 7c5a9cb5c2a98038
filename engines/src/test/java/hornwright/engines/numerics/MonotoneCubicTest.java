package hornwright.engines.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.IntStream;
import org.hipparchus.analysis.interpolation.HermiteInterpolator;
import org.hipparchus.analysis.interpolation.SplineInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;
import org.junit.jupiter.api.Test;

class MonotoneCubicTest {
    /** Data of radiochemistry, Fritsch and Carlson 1980, table 1; digits from memory. */
    private static final double[] RPN_X = {7.99, 8.09, 8.19, 8.7, 9.2, 10, 12, 15, 20};

    private static final double[] RPN_Y = {
        0, 2.76429e-5, 4.37498e-2, 0.169183, 0.469428, 0.943740, 0.998636, 0.999919, 0.999994
    };

    private record Points(double[] x, double[] y) {
        static Points drawn(Random lot) {
            int size = 2 + lot.nextInt(9);
            double[] x = new double[size];
            double[] y = new double[size];
            double sense = lot.nextBoolean() ? 1 : -1;
            for (int i = 1; i < size; i++) {
                x[i] = x[i - 1] + Math.exp(3 * lot.nextGaussian());
                y[i] = y[i - 1] + (lot.nextInt(4) == 0 ? 0 : sense * Math.exp(3 * lot.nextGaussian()));
            }
            return new Points(x, y);
        }
    }

    @Test
    void the_curve_of_steep_data_rises_where_a_free_spline_falls_below_nothing() {
        MonotoneCubic curve = new MonotoneCubic(RPN_X, RPN_Y);
        PolynomialSplineFunction free = new SplineInterpolator().interpolate(RPN_X, RPN_Y);
        double last = 0;
        double lowest = 0;
        for (int i = 0; i <= 1200; i++) {
            double x = Math.min(20, 7.99 + i * 12.01 / 1200);
            double now = curve.at(x);
            assertThat(now).isBetween(last, 1.0);
            last = now;
            lowest = Math.min(lowest, free.value(x));
        }
        assertThat(lowest).isLessThan(-0.001);
    }

    @Test
    void a_thousand_curves_drawn_by_lot_never_turn_back_and_stay_between_their_points() {
        Random lot = new Random(1980);
        for (int n = 0; n < 1000; n++) {
            Points points = Points.drawn(lot);
            MonotoneCubic curve = new MonotoneCubic(points.x(), points.y());
            for (int i = 1; i < points.x().length; i++) {
                double from = points.y()[i - 1];
                double to = points.y()[i];
                double slack = 1e-12 * (Math.abs(from) + Math.abs(to));
                double last = from;
                for (int k = 1; k < 40; k++) {
                    double now = curve.at(points.x()[i - 1] + k * (points.x()[i] - points.x()[i - 1]) / 40);
                    assertThat(now).isBetween(Math.min(from, to), Math.max(from, to));
                    assertThat((now - last) * Math.signum(to - from)).isGreaterThanOrEqualTo(-slack);
                    last = now;
                }
            }
        }
    }

    @Test
    void the_points_and_slopes_drawn_by_divided_differences_give_the_same_curve() {
        Random lot = new Random(17);
        for (int n = 0; n < 200; n++) {
            Points points = Points.drawn(lot);
            MonotoneCubic curve = new MonotoneCubic(points.x(), points.y());
            double[] slopes = curve.slopes();
            for (int i = 1; i < slopes.length; i++) {
                double start = points.x()[i - 1];
                double width = points.x()[i] - start;
                HermiteInterpolator other = new HermiteInterpolator();
                other.addSamplePoint(0, new double[] {points.y()[i - 1]}, new double[] {slopes[i - 1] * width});
                other.addSamplePoint(1, new double[] {points.y()[i]}, new double[] {slopes[i] * width});
                double size = 1 + Math.abs(points.y()[i - 1]) + Math.abs(points.y()[i]);
                for (double t : new double[] {0.1, 0.37, 0.5, 0.82}) {
                    assertThat(curve.at(start + t * width)).isCloseTo(other.value(t)[0], within(1e-9 * size));
                }
            }
        }
    }

    @Test
    void a_parabola_that_only_rises_comes_back_as_itself() {
        double[] x = {1, 1.5, 3, 4, 7};
        double[] y = IntStream.range(0, 5).mapToDouble(i -> x[i] * x[i]).toArray();
        MonotoneCubic curve = new MonotoneCubic(x, y);
        for (double at = 1; at <= 7; at += 0.05) {
            assertThat(curve.at(at)).isCloseTo(at * at, within(1e-12 * 49));
        }
    }

    @Test
    void two_points_make_a_straight_line_and_the_points_themselves_are_met() {
        MonotoneCubic line = new MonotoneCubic(new double[] {2, 6}, new double[] {10, 12});
        assertThat(line.at(3)).isCloseTo(10.5, within(1e-14));
        MonotoneCubic curve = new MonotoneCubic(RPN_X, RPN_Y);
        for (int i = 0; i < RPN_X.length; i++) {
            assertThat(curve.at(RPN_X[i])).isEqualTo(RPN_Y[i]);
        }
    }

    @Test
    void nothing_is_said_beyond_the_points_and_no_curve_goes_back() {
        MonotoneCubic curve = new MonotoneCubic(RPN_X, RPN_Y);
        assertThatIllegalArgumentException().isThrownBy(() -> curve.at(7.98)).withMessageContaining("outside");
        assertThatIllegalArgumentException().isThrownBy(() -> curve.at(20.1));
        assertThatIllegalArgumentException().isThrownBy(() -> curve.at(Double.NaN));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new MonotoneCubic(new double[] {1, 1}, new double[] {0, 1}));
        assertThatIllegalArgumentException().isThrownBy(() -> new MonotoneCubic(new double[] {1}, new double[] {0}));
    }
}
