package hornwright.engines.belief;

import java.util.List;
import java.util.Map;

/**
 * What the sightings say, averaged over every possible way of cutting the line of serials into segments.
 *
 * @param logEvidence natural logarithm of the probability of the ordered sightings
 * @param changes probability of 0, 1, 2 … changes; entries below 1e-30 may read 0
 * @param changeAfter one entry for each position but the last: probability that the material's law changed after it
 * @param best the single most probable segmentation
 * @param at one answer for each serial asked about, in the order asked
 * @param changeOver one interval for each cut of {@code best}, ascending
 */
public record BeliefAnswer(
        double logEvidence,
        List<Double> changes,
        List<ChangeAfter> changeAfter,
        List<Segment> best,
        List<At> at,
        List<ChangeOver> changeOver) {

    public record ChangeAfter(long serial, double probability) {}

    /** From the first to the last serial seen in it, with the weight seen of each material. */
    public record Segment(long from, long to, Map<String, Double> counts) {}

    public record At(long serial, Map<String, Double> probabilities, Standing standing) {}

    /** Serials between which at least one change lies with this probability. */
    public record ChangeOver(long from, long to, double probability) {}
}
