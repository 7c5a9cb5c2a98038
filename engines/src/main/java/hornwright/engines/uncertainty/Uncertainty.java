package hornwright.engines.uncertainty;

import java.util.ArrayList;
import java.util.List;

/**
 * Propagation of uncertainty, first order and by drawing.
 *
 * <p>First order: derivatives are exact (dual numbers), degrees of freedom by Welch and Satterthwaite. Drawing: error of a
 * limit about u/√draws times a few. The two differ where the model bends within the uncertainty; believe the drawing.
 */
public final class Uncertainty {
    private Uncertainty() {}

    public static UncertaintyAnswer of(UncertaintyQuestion question) {
        List<InputQuantity> inputs = question.inputs();
        Dual there = question.model()
                .once(inputs.stream().mapToDouble(InputQuantity::value).toArray());
        List<Double> contributions = new ArrayList<>();
        double square = 0;
        for (int i = 0; i < inputs.size(); i++) {
            double u = inputs.get(i).u();
            double contribution = u == 0 ? 0 : there.slopes()[i] * u;
            contributions.add(contribution);
            square += contribution * contribution;
        }
        double u = Math.sqrt(square);
        double dof = dof(inputs, contributions, square);
        double whole = Math.floor(dof * (1 + 1e-12));
        double half = u == 0 ? 0 : u * StudentT.halfWidth(question.coverage(), whole);
        return new UncertaintyAnswer(
                there.value(),
                u,
                dof,
                new Interval(there.value() - half, there.value() + half),
                contributions,
                Drawing.of(question));
    }

    /** B. L. Welch and F. E. Satterthwaite: u⁴ over the sum of each contribution's fourth power by its own dof. */
    private static double dof(List<InputQuantity> inputs, List<Double> contributions, double square) {
        double sum = 0;
        for (int i = 0; i < inputs.size(); i++) {
            double share = contributions.get(i) * contributions.get(i) / square;
            sum += share * share / inputs.get(i).dof();
        }
        return sum > 0 ? 1 / sum : Double.POSITIVE_INFINITY;
    }
}
