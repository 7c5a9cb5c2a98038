package hornwright.engines.uncertainty;

import hornwright.engines.uncertainty.UncertaintyAnswer.Drawn;
import java.util.Arrays;
import java.util.SplittableRandom;

/** Draws every input many times and sorts the results; intervals by the ranks of JCGM 101:2008, 7.7. */
final class Drawing {
    private static final int BLOCK = 1024;
    private static final Interval NONE = new Interval(Double.NaN, Double.NaN);

    private Drawing() {}

    static Drawn of(UncertaintyQuestion question) {
        double[] results = results(question);
        int count = results.length;
        int finite = 0;
        for (double result : results) {
            finite += Double.isFinite(result) ? 1 : 0;
        }
        if (finite < count) {
            double share = (count - finite) / (double) count;
            return new Drawn(Double.NaN, Double.NaN, NONE, NONE, share);
        }
        Arrays.sort(results);
        double mean = mean(results);
        int held = Math.clamp((int) Math.floor(question.coverage() * count + 0.5), 1, count - 1);
        int first = Math.max(1, (count - held + 1) / 2);
        Interval middle = new Interval(results[first - 1], results[first - 1 + held]);
        return new Drawn(mean, deviation(results, mean), middle, shortest(results, held), 0);
    }

    private static double[] results(UncertaintyQuestion question) {
        int inputs = question.inputs().size();
        SplittableRandom root = new SplittableRandom(question.seed());
        SplittableRandom[] streams = new SplittableRandom[inputs];
        Arrays.setAll(streams, i -> root.split());
        double[][] block = new double[inputs][BLOCK];
        double[] results = new double[question.draws()];
        for (int from = 0; from < results.length; from += BLOCK) {
            for (int i = 0; i < inputs; i++) {
                fill(question.inputs().get(i), streams[i], block[i]);
            }
            int count = Math.min(BLOCK, results.length - from);
            System.arraycopy(question.model().many(block, count), 0, results, from, count);
        }
        return results;
    }

    private static void fill(InputQuantity input, SplittableRandom stream, double[] draws) {
        input.shape().draw(stream, input.dof(), draws);
        for (int k = 0; k < draws.length; k++) {
            draws[k] = input.value() + input.u() * draws[k];
        }
    }

    private static double mean(double[] results) {
        double shift = results[results.length / 2];
        double sum = 0;
        for (double result : results) {
            sum += result - shift;
        }
        return shift + sum / results.length;
    }

    private static double deviation(double[] results, double mean) {
        double sum = 0;
        for (double result : results) {
            sum += (result - mean) * (result - mean);
        }
        return Math.sqrt(sum / (results.length - 1));
    }

    private static Interval shortest(double[] sorted, int held) {
        int best = 0;
        for (int i = 1; i + held < sorted.length; i++) {
            if (sorted[i + held] - sorted[i] < sorted[best + held] - sorted[best]) {
                best = i;
            }
        }
        return new Interval(sorted[best], sorted[best + held]);
    }
}
