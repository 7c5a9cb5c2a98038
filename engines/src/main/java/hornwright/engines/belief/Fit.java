package hornwright.engines.belief;

import java.util.Arrays;

/**
 * How well what was seen at each position fits each material that the horn may truly have had, and each way of working.
 * A look of weight w at a horn of material t has likelihood (1 − ε)^w if it shows t, else (ε / (K − 1))^w.
 */
final class Fit {
    private final Laws laws;
    private final double[][] ofMaterial;

    Fit(Positions seen, Laws laws, double error) {
        this.laws = laws;
        int kinds = laws.materials;
        double[] logs = new double[kinds];
        double right = Math.log1p(-error);
        double wrong = kinds == 1 ? right : Math.log(error / (kinds - 1));
        ofMaterial = new double[seen.size()][kinds];
        for (int i = 0; i < ofMaterial.length; i++) {
            double all = 0;
            Arrays.fill(logs, 0);
            for (int e = seen.firstEntry(i); e < seen.firstEntry(i + 1); e++) {
                double weight = seen.entrySteps(e) * seen.unit;
                all += weight * wrong;
                logs[seen.entryMaterial(e)] += weight * (right - wrong);
            }
            for (int k = 0; k < kinds; k++) {
                ofMaterial[i][k] = Math.exp(all + logs[k]);
            }
        }
    }

    int positions() {
        return ofMaterial.length;
    }

    /** Likelihood under each way, written from {@code offset} on. */
    void ofWays(int position, double[] into, int offset) {
        double[] fit = ofMaterial[position];
        int ways = laws.ways();
        Arrays.fill(into, offset, offset + ways, 0);
        for (int k = 0; k < fit.length; k++) {
            double here = fit[k];
            double[] shares = laws.shares[k];
            for (int z = 0; z < ways; z++) {
                into[offset + z] += here * shares[z];
            }
        }
    }

    /**
     * Chance of each material on the horn at a position: what its time put in, and what was seen on it itself.
     *
     * @param chances of each way after everything seen; the horn's own looks are in them
     */
    double[] ofHorn(int position, double[] chances) {
        double[] ways = new double[laws.ways()];
        ofWays(position, ways, 0);
        double[] sum = new double[laws.materials];
        for (int k = 0; k < sum.length; k++) {
            double[] shares = laws.shares[k];
            for (int z = 0; z < ways.length; z++) {
                sum[k] += chances[z] * shares[z] * ofMaterial[position][k] / ways[z];
            }
        }
        return sum;
    }
}
