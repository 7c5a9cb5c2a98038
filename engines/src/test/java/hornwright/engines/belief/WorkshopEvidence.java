package hornwright.engines.belief;

/** One segment under one way of working drawn anew: the sum over all ways, behind the recursion over segmentations. */
record WorkshopEvidence(Laws laws, Fit fit) implements SegmentEvidence {
    @Override
    public int positions() {
        return fit.positions();
    }

    @Override
    public void from(int start, double[] logs) {
        for (int end = start + 1; end <= positions(); end++) {
            double sum = 0;
            for (double way : joint(start, end)) {
                sum += way;
            }
            logs[end] = Math.log(sum);
        }
    }

    /** Prior times likelihood of each way over positions start (included) to end (excluded). */
    double[] joint(int start, int end) {
        double[] joint = laws.prior.clone();
        double[] here = new double[laws.ways()];
        for (int i = start; i < end; i++) {
            fit.ofWays(i, here, 0);
            for (int z = 0; z < here.length; z++) {
                joint[z] *= here[z];
            }
        }
        return joint;
    }
}
