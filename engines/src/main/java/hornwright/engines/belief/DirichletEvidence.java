package hornwright.engines.belief;

import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * Materials in a segment drawn from one unknown mixture with a symmetric Dirichlet prior:
 * Γ(Kα)/Γ(Kα+N) · Π Γ(α+n_k)/Γ(α), of the ordered sequence. Weights make n_k a real number.
 */
final class DirichletEvidence implements SegmentEvidence {
    private final Positions seen;
    private final DoubleUnaryOperator ofMaterial;
    private final DoubleUnaryOperator ofTotal;
    private final @Nullable Steps steps;

    DirichletEvidence(Positions seen, double prior) {
        this.seen = seen;
        double largest = seen.totalSteps();
        ofMaterial = LogGamma.rising(prior, seen.unit, largest, seen.whole);
        ofTotal = LogGamma.rising(prior * seen.materials(), seen.unit, largest, seen.whole);
        steps = Steps.of(seen, prior);
    }

    @Override
    public int positions() {
        return seen.size();
    }

    @Override
    public void from(int start, double[] logs) {
        double[] steps = new double[seen.materials()];
        double[] terms = new double[seen.materials()];
        double total = 0;
        for (int end = start + 1; end <= seen.size(); end++) {
            for (int e = seen.firstEntry(end - 1); e < seen.firstEntry(end); e++) {
                int k = seen.entryMaterial(e);
                steps[k] += seen.entrySteps(e);
                total += seen.entrySteps(e);
                terms[k] = ofMaterial.applyAsDouble(steps[k]);
            }
            double sum = -ofTotal.applyAsDouble(total);
            for (double term : terms) {
                sum += term;
            }
            logs[end] = sum;
        }
    }

    @Override
    public void grow(int start, double[] growth) {
        if (steps == null) {
            SegmentEvidence.super.grow(start, growth);
        } else {
            steps.grow(start, growth);
        }
    }
}
