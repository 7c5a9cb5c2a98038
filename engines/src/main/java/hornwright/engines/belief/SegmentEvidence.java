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
}
