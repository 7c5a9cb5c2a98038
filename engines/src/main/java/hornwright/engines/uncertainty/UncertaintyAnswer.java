package hornwright.engines.uncertainty;

import java.util.List;

/**
 * What the inputs' uncertainty does to the result.
 *
 * @param value of the model at the estimates
 * @param u standard uncertainty, first order
 * @param dof effective degrees of freedom, not rounded; infinite if all are
 * @param interval about the value, with Student's factor at the whole degrees of freedom below
 * @param contributions signed sensitivity times u of each input, in their order
 * @param drawn the same by drawing
 */
public record UncertaintyAnswer(
        double value, double u, double dof, Interval interval, List<Double> contributions, Drawn drawn) {
    public UncertaintyAnswer {
        contributions = List.copyOf(contributions);
    }

    /** Whether the first-order answer exists at all. */
    public boolean isFinite() {
        return Double.isFinite(value) && Double.isFinite(u);
    }

    /**
     * The result as drawn.
     *
     * @param value mean
     * @param u standard deviation
     * @param interval with equal shares left out below and above
     * @param shortest the shortest that holds the share
     * @param notFiniteShare of the draws; when above 0 all the rest is NaN
     */
    public record Drawn(double value, double u, Interval interval, Interval shortest, double notFiniteShare) {}
}
