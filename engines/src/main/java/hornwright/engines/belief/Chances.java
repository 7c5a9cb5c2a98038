package hornwright.engines.belief;

/** Collects the chance of each material at each position, averaged over the segments it may belong to. */
final class Chances implements Segmentations.Visitor {
    private final Positions seen;
    private final double prior;
    /** What a segment adds at its start and takes away at its end; running sums are the chances. */
    private final double[][] steps;

    Chances(Positions seen, double prior) {
        this.seen = seen;
        this.prior = prior;
        steps = new double[seen.size() + 1][seen.materials()];
    }

    @Override
    public void segment(int start, int end, double probability) {
        double total = 0;
        for (int k = 0; k < seen.materials(); k++) {
            total += prior + seen.count(k, start, end);
        }
        double share = probability / total;
        double[] opens = steps[start];
        double[] closes = steps[end];
        for (int k = 0; k < seen.materials(); k++) {
            double chance = share * (prior + seen.count(k, start, end));
            opens[k] += chance;
            closes[k] -= chance;
        }
    }

    double[][] byPosition() {
        double[][] chances = new double[seen.size()][seen.materials()];
        double[] sum = new double[seen.materials()];
        for (int i = 0; i < seen.size(); i++) {
            for (int k = 0; k < sum.length; k++) {
                sum[k] += steps[i][k];
                chances[i][k] = sum[k];
            }
        }
        return chances;
    }
}
