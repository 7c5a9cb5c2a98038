package hornwright.engines.belief;

/**
 * How well one unbroken segment of the line explains what was seen in it.
 *
 * <p>The recursion over segmentations knows nothing else about the data, so any likelihood whose segment can be
 * integrated in closed form fits behind it: materials (Dirichlet and multinomial), counts (gamma and Poisson).
 */
interface SegmentEvidence {

    /** Number of positions on the line. */
    int positions();

    /**
     * Fills {@code logs[end]}, for every end with start &lt; end ≤ positions, with the natural logarithm of the marginal
     * likelihood of positions start (included) to end (excluded). Other entries are left alone.
     */
    void from(int start, double[] logs);

    /**
     * Fills {@code growth[end]} with how many times likelier or less likely the segment becomes by taking in position
     * end − 1: the ratio of what {@link #from} gives for end and end − 1, a segment of no positions counting 1.
     */
    default void grow(int start, double[] growth) {
        from(start, growth);
        for (int end = positions(); end > start + 1; end--) {
            growth[end] = Math.exp(growth[end] - growth[end - 1]);
        }
        growth[start + 1] = Math.exp(growth[start + 1]);
    }
}
