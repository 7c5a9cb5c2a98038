package hornwright.engines.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

class UncertaintyPropertyTest {
    private static final double KNOWN = Double.POSITIVE_INFINITY;
    private static final List<String> XYZ = List.of("x", "y", "z");

    private static double value(String model, double x, double y, double z) {
        return Model.of(model, XYZ).once(new double[] {x, y, z}).value();
    }

    private static UncertaintyAnswer one(Shape shape, double dof, String model) {
        return UncertaintyPublishedTest.ask(List.of(new InputQuantity("x", 2, 0.1, shape, dof)), model, 200_000, 0.95);
    }

    @Test
    void signs_powers_and_brackets_bind_as_on_paper() {
        assertThat(value("2 + 3*4", 0, 0, 0)).isEqualTo(14);
        assertThat(value("(2 + 3)*4", 0, 0, 0)).isEqualTo(20);
        assertThat(value("-x^2", 3, 0, 0)).isEqualTo(-9);
        assertThat(value("2^3^2", 0, 0, 0)).isEqualTo(512);
        assertThat(value("2^-1", 0, 0, 0)).isEqualTo(0.5);
        assertThat(value("8/4/2", 0, 0, 0)).isEqualTo(1);
        assertThat(value("8-4-2", 0, 0, 0)).isEqualTo(2);
        assertThat(value("--x", 3, 0, 0)).isEqualTo(3);
        assertThat(value("1.5e-2*2E2 + .5", 0, 0, 0)).isEqualTo(3.5);
        assertThat(value("min(x, y, z) + max(x, y)", 3, 1, 2)).isEqualTo(4);
        assertThat(value(" abs( -x ) + sqrt(y)*cos(pi) ", 3, 4, 0)).isEqualTo(1);
        assertThat(value("log(exp(x)) + sin(0) + tan(0)", 3, 0, 0)).isCloseTo(3, within(1e-15));
    }

    @Test
    void what_cannot_be_read_is_told_by_its_character() {
        assertFault("x + ", "character 5", "ends where a value is due");
        assertFault("x + w", "character 5", "\"w\" is neither");
        assertFault("(x", "character 3", "\")\" is due");
        assertFault("x y", "character 3", "does not belong here");
        assertFault("", "character 1", "a value is due");
        assertFault("sqrt(x, y)", "character 1", "takes one value");
        assertFault("x + * y", "character 5", "a value is due, not \"*\"");
        assertFault("1 + .", "character 5", "no number");
        assertFault("(".repeat(5000) + "x", "character", "nested too deep");
        assertFault("-".repeat(5000) + "x", "character", "too many signs");
        assertFault("x^".repeat(5000) + "x", "character", "too many powers");
        assertFault("+x", "character 1", "a value is due");
    }

    private static void assertFault(String model, String... words) {
        assertThatThrownBy(() -> Model.of(model, XYZ))
                .isInstanceOf(ModelFault.class)
                .hasMessageContainingAll(words);
    }

    /** Second method: the derivative by a small step either way. */
    @Test
    void derivatives_agree_with_small_steps() {
        List<String> models = List.of(
                "x*y - z/x",
                "sqrt(x) + exp(-y)*log(z)",
                "sin(x)*cos(y)/tan(z)",
                "x^y^0.5 - abs(z - 10)",
                "min(x, y) + max(y*2, z)",
                "(x + 1)^3/(y*z)");
        Random random = new Random(1);
        for (String text : models) {
            Model model = Model.of(text, XYZ);
            for (int trial = 0; trial < 50; trial++) {
                double[] at = {1 + random.nextDouble(), 2.1 + random.nextDouble(), 0.2 + random.nextDouble()};
                Dual there = model.once(at);
                for (int i = 0; i < 3; i++) {
                    double[] up = at.clone();
                    double[] down = at.clone();
                    up[i] += 1e-6;
                    down[i] -= 1e-6;
                    double slope = (model.once(up).value() - model.once(down).value()) / 2e-6;
                    assertThat(there.slopes()[i]).isCloseTo(slope, within(1e-7 * (1 + Math.abs(slope))));
                }
            }
        }
    }

    @Test
    void a_whole_power_of_a_negative_number_has_its_slope() {
        Dual square = Model.of("(x - 3)^2 + x^0", List.of("x")).once(new double[] {1});
        assertThat(square.value()).isEqualTo(5);
        assertThat(square.slopes()[0]).isEqualTo(-4);
        Dual corner = Model.of("abs(x)", List.of("x")).once(new double[] {0});
        assertThat(corner.slopes()[0]).isZero();
    }

    @Test
    void drawn_many_at_once_and_one_by_one_are_the_same() {
        Model model = Model.of("x^2 + min(y, sqrt(abs(z)))/exp(x) - -y", XYZ);
        Random random = new Random(2);
        double[][] columns = new double[3][100];
        for (double[] column : columns) {
            for (int i = 0; i < 100; i++) {
                column[i] = random.nextGaussian();
            }
        }
        double[] many = model.many(columns, 100);
        for (int i = 0; i < 100; i++) {
            double once = model.once(new double[] {columns[0][i], columns[1][i], columns[2][i]})
                    .value();
            assertThat(many[i]).isEqualTo(once);
        }
    }

    @Test
    void every_shape_is_drawn_with_its_standard_uncertainty_and_its_own_tails() {
        for (Shape shape : Shape.values()) {
            UncertaintyAnswer answer = one(shape, shape == Shape.STUDENT ? 8 : KNOWN, "x");
            assertThat(answer.drawn().value()).isCloseTo(2, within(1e-3));
            assertThat(answer.drawn().u()).isCloseTo(0.1, within(1e-3));
        }
        double rectangular = half(one(Shape.RECTANGULAR, KNOWN, "x"));
        double triangular = half(one(Shape.TRIANGULAR, KNOWN, "x"));
        double normal = half(one(Shape.NORMAL, KNOWN, "x"));
        double student = half(one(Shape.STUDENT, 8, "x"));
        assertThat(rectangular).isCloseTo(0.1 * 0.95 * Math.sqrt(3), within(5e-4));
        assertThat(triangular).isCloseTo(0.1 * Math.sqrt(6) * (1 - Math.sqrt(0.05)), within(1e-3));
        assertThat(normal).isCloseTo(0.196, within(1e-3));
        assertThat(student).isCloseTo(0.1 * Math.sqrt(6.0 / 8) * 2.306004, within(1.5e-3));
    }

    private static double half(UncertaintyAnswer answer) {
        return (answer.drawn().interval().high() - answer.drawn().interval().low()) / 2;
    }

    @Test
    void a_normal_is_drawn_normal_whatever_its_degrees_of_freedom() {
        assertThat(one(Shape.NORMAL, 3, "x").drawn())
                .isEqualTo(one(Shape.NORMAL, KNOWN, "x").drawn());
        assertThat(one(Shape.NORMAL, 3, "x").interval().high() - 2).isCloseTo(0.31824, within(1e-5));
    }

    @Test
    void the_seed_decides_the_draws_and_one_more_input_leaves_the_others_alone() {
        assertThat(one(Shape.NORMAL, KNOWN, "x").drawn())
                .isEqualTo(one(Shape.NORMAL, KNOWN, "x").drawn());
        InputQuantity x = new InputQuantity("x", 2, 0.1, Shape.NORMAL, KNOWN);
        InputQuantity y = new InputQuantity("y", 5, 0, Shape.NORMAL, KNOWN);
        assertThat(UncertaintyPublishedTest.ask(List.of(x, y), "x", 200_000, 0.95)
                        .drawn())
                .isEqualTo(one(Shape.NORMAL, KNOWN, "x").drawn());
    }

    @Test
    void a_lopsided_result_has_a_shorter_interval_than_the_symmetric_one() {
        UncertaintyAnswer answer = one(Shape.NORMAL, KNOWN, "exp(10*x)");
        double symmetric =
                answer.drawn().interval().high() - answer.drawn().interval().low();
        double shortest =
                answer.drawn().shortest().high() - answer.drawn().shortest().low();
        assertThat(shortest).isLessThan(0.9 * symmetric);
        double mode = Math.exp(20);
        assertThat(answer.drawn().shortest().low()).isLessThan(mode);
        assertThat(answer.drawn().value()).isCloseTo(mode * Math.exp(0.5), Percentage.withPercentage(2));
    }

    @Test
    void draws_that_are_no_numbers_are_counted_not_dropped() {
        UncertaintyAnswer answer = UncertaintyPublishedTest.ask(
                List.of(new InputQuantity("x", 0, 1, Shape.NORMAL, KNOWN)), "sqrt(x)", 100_000, 0.95);
        assertThat(answer.drawn().notFiniteShare()).isCloseTo(0.5, within(0.01));
        assertThat(answer.drawn().value()).isNaN();
        assertThat(answer.isFinite()).isFalse();
    }

    @Test
    void effective_degrees_of_freedom_lie_between_the_least_and_the_sum() {
        Random random = new Random(3);
        for (int trial = 0; trial < 300; trial++) {
            double a = 1 + random.nextInt(20);
            double b = 1 + random.nextInt(20);
            List<InputQuantity> inputs = List.of(
                    new InputQuantity("x", 1, random.nextDouble() * 1e-90, Shape.NORMAL, a),
                    new InputQuantity("y", 1, random.nextDouble() * 1e-90, Shape.NORMAL, b));
            double dof = UncertaintyPublishedTest.ask(inputs, "x + y", 2, 0.95).dof();
            assertThat(dof).isBetween(Math.min(a, b) * (1 - 1e-12), (a + b) * (1 + 1e-12));
        }
    }

    @Test
    void nothing_uncertain_gives_a_point() {
        UncertaintyAnswer answer =
                UncertaintyPublishedTest.ask(List.of(new InputQuantity("x", 3, 0, Shape.NORMAL, 5)), "2*x", 10, 0.95);
        assertThat(answer.interval()).isEqualTo(new Interval(6, 6));
        assertThat(answer.dof()).isInfinite();
        assertThat(answer.drawn().shortest()).isEqualTo(new Interval(6, 6));
    }

    @Test
    void inputs_without_sense_are_refused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new InputQuantity("x", 0, -1, Shape.NORMAL, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> new InputQuantity("x", 0, 1, Shape.STUDENT, 2));
        assertThatIllegalArgumentException().isThrownBy(() -> Model.of("x", List.of("x", "x")));
        assertThat(Model.mayBeId("pi")).isFalse();
        assertThat(Model.mayBeId("a-b")).isFalse();
        assertThat(Model.mayBeId("2a")).isFalse();
        assertThat(Model.mayBeId("δα_2")).isTrue();
    }
}
