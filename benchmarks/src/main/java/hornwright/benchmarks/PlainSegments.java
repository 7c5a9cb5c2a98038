package hornwright.benchmarks;

import hornwright.engines.belief.BeliefQuestion;
import hornwright.engines.belief.Sighting;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.special.Gamma;

/** The plain way: the recursion over all segmentations in logarithms, a sum of exponentials for each start; evidence alone. */
final class PlainSegments {
    private PlainSegments() {}

    static double logEvidence(BeliefQuestion question) {
        List<Sighting> line = question.observations();
        int n = line.size();
        int kinds = question.materials().size();
        double prior = question.prior();
        double cut = Math.log(question.change());
        double stay = Math.log1p(-question.change());
        double[] rest = new double[n + 1];
        double[] logs = new double[n + 1];
        double[] quarters = risen(prior, 4 * n);
        double[] all = risen(kinds * prior, 4 * n);
        for (int s = n - 1; s >= 0; s--) {
            int[] counts = new int[kinds];
            int total = 0;
            double largest = Double.NEGATIVE_INFINITY;
            for (int t = s + 1; t <= n; t++) {
                Sighting seen = line.get(t - 1);
                int weight = (int) Math.round(4 * seen.weight());
                counts[question.materials().indexOf(seen.material())] += weight;
                total += weight;
                double log = -all[total] + (t - s - 1) * stay + (t < n ? cut + rest[t] : 0);
                for (int count : counts) {
                    log += quarters[count];
                }
                logs[t] = log;
                largest = Math.max(largest, log);
            }
            double most = largest;
            rest[s] = most
                    + Math.log(Arrays.stream(logs, s + 1, n + 1)
                            .map(log -> Math.exp(log - most))
                            .sum());
        }
        return rest[0];
    }

    private static double[] risen(double base, int most) {
        double[] risen = new double[most + 1];
        Arrays.setAll(risen, i -> Gamma.logGamma(base + i / 4.0) - Gamma.logGamma(base));
        return risen;
    }
}
