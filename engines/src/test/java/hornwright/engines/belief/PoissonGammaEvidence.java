package hornwright.engines.belief;

/** Counts per position, Poisson with one unknown rate a segment; the rate has a gamma(shape 1, rate 1) prior. */
record PoissonGammaEvidence(int[] counts) implements SegmentEvidence {
    @Override
    public int positions() {
        return counts.length;
    }

    @Override
    public void from(int start, double[] logs) {
        int sum = 0;
        double factorials = 0;
        for (int end = start + 1; end <= counts.length; end++) {
            sum += counts[end - 1];
            factorials += LogGamma.of(counts[end - 1] + 1);
            logs[end] = LogGamma.of(1 + sum) - (1 + sum) * Math.log(1 + end - start) - factorials;
        }
    }
}
