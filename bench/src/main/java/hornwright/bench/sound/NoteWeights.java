package hornwright.bench.sound;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Keywork;
import hornwright.engines.air.Air;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * How much the notes of a play test count, and how alike they err: each has its own doubt, and a height that is not what it was
 * read to be moves every note the pad stands open for.
 */
final class NoteWeights {
    private NoteWeights() {}

    /**
     * The inverse of the covariance of the notes heard, 1/cents².
     *
     * @param heightU one standard uncertainty of the front height by cup, mm; a cup that is missing is taken as exact
     * @param measuredHz by fingering in the order of the keywork; NaN where nothing was heard
     * @param uCents one standard uncertainty of a note by itself
     */
    static double[][] of(
            Keywork keywork,
            Air air,
            HornShape shape,
            Map<String, Double> heightU,
            double[] measuredHz,
            double uCents) {
        List<double[]> effects = new ArrayList<>();
        double[][] perMm = heightU.isEmpty()
                ? new double[0][]
                : HeightEffects.of(keywork, air, shape).perMm();
        for (int i = 0; i < measuredHz.length; i++) {
            if (measuredHz[i] > 0) {
                effects.add(heightU.isEmpty() ? new double[0] : perMm[i]);
            }
        }
        List<Cup> cups = keywork.cups().list();
        double[] u = cups.stream()
                .mapToDouble(cup -> heightU.getOrDefault(cup.id(), 0.0))
                .toArray();
        double[][] covariance = new double[effects.size()][effects.size()];
        for (int i = 0; i < covariance.length; i++) {
            for (int k = 0; k < covariance.length; k++) {
                covariance[i][k] = (i == k ? uCents * uCents : 0) + shared(effects.get(i), effects.get(k), u);
            }
        }
        return Inverse.of(covariance);
    }

    private static double shared(double[] one, double[] other, double[] u) {
        double sum = 0;
        for (int cup = 0; cup < one.length; cup++) {
            sum += one[cup] * other[cup] * u[cup] * u[cup];
        }
        return sum;
    }

    static double[] times(double[][] matrix, double[] vector) {
        double[] product = new double[vector.length];
        for (int i = 0; i < product.length; i++) {
            for (int k = 0; k < product.length; k++) {
                product[i] += matrix[i][k] * vector[k];
            }
        }
        return product;
    }
}
