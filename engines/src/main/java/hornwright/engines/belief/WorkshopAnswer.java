package hornwright.engines.belief;

import hornwright.engines.belief.BeliefAnswer.ChangeAfter;
import hornwright.engines.belief.BeliefAnswer.ChangeOver;
import java.util.List;
import java.util.Map;

/**
 * What a works did along its serial numbers, averaged over every course it may have taken.
 *
 * @param logEvidence natural logarithm of the probability of what was seen
 * @param changeAfter one entry for each serial seen but the last: probability that the works did otherwise at the next
 * @param best stretches in which the same materials were most probably in use, each serial judged by itself
 * @param at one answer for each serial asked about, in the order asked
 * @param changeOver one interval for each change of {@code best}, ascending
 */
public record WorkshopAnswer(
        double logEvidence, List<ChangeAfter> changeAfter, List<Spell> best, List<At> at, List<ChangeOver> changeOver) {

    /**
     * A stretch of serials in which the works most probably used the same materials.
     *
     * @param from first serial seen in it
     * @param to last serial seen in it
     * @param shares of each material that it put in: one of them 1, or two or three side by side
     * @param mixed probability, averaged over the serials seen in it, that more than one material was in use
     */
    public record Spell(long from, long to, Map<String, Double> shares, double mixed) {
        /** Whether more than one material was in use. */
        public boolean isMixed() {
            return shares.values().stream().filter(share -> share > 0).count() > 1;
        }
    }

    /**
     * @param probabilities of each material on the horn of this very number
     * @param shares of each material on the horns of this time; the same, unless this very horn was seen
     * @param mixed probability that more than one material was in use
     */
    public record At(
            long serial,
            Map<String, Double> probabilities,
            Map<String, Double> shares,
            double mixed,
            Standing standing) {}
}
