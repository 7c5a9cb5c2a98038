package hornwright.engines.belief;

import java.util.Arrays;

/**
 * Every course a works may have taken along the positions, summed exactly: at each position one way of working; after
 * each position, with probability p, a new one is drawn. A hidden Markov chain whose every step either stays or forgets,
 * so that a pass costs positions × ways and not × ways squared.
 *
 * <p>Source: L. R. Rabiner 1989 (forward and backward passes, scaled at each step).
 */
final class Courses {
    private final Laws laws;
    private final Fit fit;
    private final int n;
    private final int ways;
    private final double change;
    /** Chances from the left, from the right, and likelihoods, each position after the other; scaled so that left · right sums to 1. */
    private final double[] left;

    private final double[] right;
    private final double[] fits;
    private double logEvidence;

    Courses(Fit fit, Laws laws, double change) {
        this.laws = laws;
        this.fit = fit;
        this.change = change;
        n = fit.positions();
        ways = laws.ways();
        left = new double[n * ways];
        right = new double[n * ways];
        fits = new double[n * ways];
        for (int i = 0; i < n; i++) {
            fit.ofWays(i, fits, i * ways);
            forward(i * ways);
        }
        for (int i = n - 1; i >= 0; i--) {
            backward(i * ways);
        }
    }

    private void forward(int here) {
        int before = here - ways;
        double sum = 0;
        for (int z = 0; z < ways; z++) {
            double came = here == 0 ? laws.prior[z] : (1 - change) * left[before + z] + change * laws.prior[z];
            left[here + z] = came * fits[here + z];
            sum += left[here + z];
        }
        double scale = 1 / sum;
        for (int z = 0; z < ways; z++) {
            left[here + z] *= scale;
            fits[here + z] *= scale;
        }
        logEvidence += Math.log(sum);
    }

    private void backward(int here) {
        int after = here + ways;
        if (after == n * ways) {
            Arrays.fill(right, here, after, 1);
            return;
        }
        double drawn = 0;
        for (int z = 0; z < ways; z++) {
            drawn += laws.prior[z] * fits[after + z] * right[after + z];
        }
        for (int z = 0; z < ways; z++) {
            right[here + z] = (1 - change) * fits[after + z] * right[after + z] + change * drawn;
        }
    }

    double logEvidence() {
        return logEvidence;
    }

    /** Adds the chance of each way at a position, times a weight. */
    void addChances(int position, double weight, double[] chances) {
        for (int z = 0; z < ways; z++) {
            chances[z] += weight * left[position * ways + z] * right[position * ways + z];
        }
    }

    /** Adds the chance of each material on the horn seen at a position, times a weight. */
    void addHorn(int position, double weight, double[] sum) {
        double[] chances = new double[ways];
        addChances(position, weight, chances);
        double[] own = fit.ofHorn(position, chances);
        for (int k = 0; k < sum.length; k++) {
            sum[k] += own[k];
        }
    }

    /** For each way, weight of keeping to it from the position before up to this one; a new way drawn may be the old one. */
    void keepTo(int position, double[] products) {
        for (int z = 0; z < ways; z++) {
            products[z] *= (1 - change + change * laws.prior[z]) * fits[position * ways + z];
        }
    }

    /** Probability of keeping to one way from the first to the last of these positions. */
    double kept(int first, int last, double[] products) {
        double sum = 0;
        for (int z = 0; z < ways; z++) {
            sum += left[first * ways + z] * products[z] * right[last * ways + z];
        }
        return Math.min(1, sum);
    }
}
