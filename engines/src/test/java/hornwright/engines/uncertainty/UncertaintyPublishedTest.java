package hornwright.engines.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornwright.engines.Ref;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class UncertaintyPublishedTest {
    private static final double KNOWN = Double.POSITIVE_INFINITY;

    private static InputQuantity of(String id, double value, double u, Shape shape, double dof) {
        return new InputQuantity(id, value, u, shape, dof);
    }

    static UncertaintyAnswer ask(List<InputQuantity> inputs, String model, int draws, double coverage) {
        Model formula = Model.of(model, inputs.stream().map(InputQuantity::id).toList());
        return Uncertainty.of(new UncertaintyQuestion(inputs, formula, draws, 1, coverage));
    }

    private static List<InputQuantity> gaugeBlock() {
        return List.of(
                of("ls", 50_000_623, 25, Shape.NORMAL, 18),
                of("d", 215, 9.7, Shape.NORMAL, 25.6),
                of("as", 11.5e-6, 1.2e-6, Shape.RECTANGULAR, KNOWN),
                of("th", -0.1, 0.41, Shape.NORMAL, KNOWN),
                of("da", 0, 0.58e-6, Shape.RECTANGULAR, 50),
                of("dt", 0, 0.029, Shape.RECTANGULAR, 2));
    }

    @Test
    void the_end_gauge_has_its_published_uncertainty() {
        Ref ref = Ref.read("uncertainty/gauge-block");
        UncertaintyAnswer answer = ask(gaugeBlock(), "ls + d - ls*(da*th + as*dt)", 1000, 0.99);
        ref.check("length_nm", answer.value(), 1);
        ref.check("u_nm", answer.u(), 1);
        ref.check("dof", answer.dof(), 1);
        double half = answer.interval().high() - answer.value();
        ref.check("factor_99", half / answer.u(), 1);
        ref.check("U99_nm", half, 1);
        ref.check("factor_95", StudentT.halfWidth(0.95, 16), 1);
        ref.check("contribution_ls", answer.contributions().get(0), 1);
        ref.check("contribution_d", answer.contributions().get(1), 1);
        assertThat(answer.contributions().get(2)).isZero();
        assertThat(answer.contributions().get(3)).isZero();
        ref.check("contribution_da", Math.abs(answer.contributions().get(4)), 1);
        ref.check("contribution_dt", Math.abs(answer.contributions().get(5)), 1);
        assertThat(answer.contributions().get(5)).isNegative();
    }

    /** The terms of second order, 11.9 and 1.74 nm, which the first order leaves out and the drawing finds. */
    @Test
    void drawing_the_end_gauge_finds_its_second_order_terms_too() {
        UncertaintyAnswer answer = ask(gaugeBlock(), "ls + d - ls*(da*th + as*dt)", 400_000, 0.99);
        assertThat(answer.drawn().u()).isCloseTo(33.91, within(0.15));
        assertThat(answer.drawn().value()).isCloseTo(50_000_838, within(0.3));
    }

    private static List<InputQuantity> four(Shape shape, double last) {
        List<InputQuantity> four = new ArrayList<>();
        for (int i = 1; i <= 4; i++) {
            four.add(of("x" + i, 0, i == 4 ? last : 1, shape, KNOWN));
        }
        return four;
    }

    @Test
    void sums_of_four_have_their_published_intervals() {
        Ref ref = Ref.read("uncertainty/sums");
        String sum = "x1 + x2 + x3 + x4";
        UncertaintyAnswer normal = ask(four(Shape.NORMAL, 1), sum, 1_000_000, 0.95);
        ref.check("normal_u", normal.u(), 1);
        ref.check("normal_u", normal.drawn().u(), 1);
        ref.check("normal_half", normal.interval().high(), 1);
        ref.check("normal_half", normal.drawn().interval().high(), 1);
        UncertaintyAnswer rectangular = ask(four(Shape.RECTANGULAR, 1), sum, 1_000_000, 0.95);
        ref.check("rectangular_half", rectangular.drawn().interval().high(), 1);
        ref.check("rectangular_half", -rectangular.drawn().interval().low(), 1);
        UncertaintyAnswer wide = ask(four(Shape.RECTANGULAR, 10), sum, 1_000_000, 0.95);
        ref.check("wide_u", wide.u(), 1);
        ref.check("wide_half", wide.drawn().interval().high(), 1);
        ref.check("wide_first_order_half", wide.interval().high(), 1);
    }

    @Test
    void the_mass_in_air_is_wider_than_first_order_says() {
        Ref ref = Ref.read("uncertainty/mass");
        double sqrt3 = Math.sqrt(3);
        List<InputQuantity> inputs = List.of(
                of("mRc", 100_000, 0.050, Shape.NORMAL, KNOWN),
                of("dmRc", 1.234, 0.020, Shape.NORMAL, KNOWN),
                of("ra", 1.2, 0.1 / sqrt3, Shape.RECTANGULAR, KNOWN),
                of("rW", 8000, 1000 / sqrt3, Shape.RECTANGULAR, KNOWN),
                of("rR", 8000, 50 / sqrt3, Shape.RECTANGULAR, KNOWN));
        String model = "(mRc + dmRc)*(1 + (ra - 1.2)*(1/rW - 1/rR)) - 100000";
        UncertaintyAnswer answer = ask(inputs, model, 1_000_000, 0.95);
        ref.check("value_mg", answer.drawn().value(), 1);
        ref.check("u_mg", answer.drawn().u(), 1);
        ref.check("low_mg", answer.drawn().interval().low(), 1);
        ref.check("high_mg", answer.drawn().interval().high(), 1);
        ref.check("first_order_u_mg", answer.u(), 1);
    }

    @Test
    void students_factors_have_their_closed_forms() {
        Ref ref = Ref.read("uncertainty/student");
        ref.check("t95_1", StudentT.halfWidth(0.95, 1), 1);
        ref.check("t95_2", StudentT.halfWidth(0.95, 2), 1);
        ref.check("t50_1", StudentT.halfWidth(0.5, 1), 1);
        ref.check("normal_95", StudentT.halfWidth(0.95, KNOWN), 1);
    }
}
