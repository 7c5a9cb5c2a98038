package hornwright.engines.belief;

import hornwright.engines.belief.BeliefAnswer.ChangeOver;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * An interval around each cut of the best segmentation that holds at least one change with probability 0.95.
 *
 * <p>It starts as the gap of the cut and takes one neighbouring gap after another, always on the side where a change is
 * likelier (the lower side if equal), and stops at 0.95, at a gap another interval holds, or at the end of the line.
 * Intervals grow in ascending order; one not yet grown holds its own gap. Which gaps are taken in which order does not
 * depend on the probability reached, so one walk over all segments finds the probability of every stage of all of them.
 */
final class ChangeOvers implements Segmentations.Visitor {
    private static final double ENOUGH = 0.95;

    private final int[] cuts;
    private final List<Growth> growths = new ArrayList<>();

    private ChangeOvers(int[] cuts, double[] cutBefore, int n) {
        this.cuts = cuts;
        for (int i = 0; i < cuts.length; i++) {
            int above = i > 0 ? cuts[i - 1] : 0;
            int below = i + 1 < cuts.length ? cuts[i + 1] : n;
            growths.add(new Growth(cuts[i], above, below, cutBefore));
        }
    }

    static List<ChangeOver> around(int[] cuts, double[] cutBefore, Segmentations segmentations, long[] serials) {
        if (cuts.length == 0) {
            return List.of();
        }
        ChangeOvers all = new ChangeOvers(cuts, cutBefore, serials.length);
        segmentations.walk(all);
        return all.grown(serials);
    }

    /** A segment leaves unbroken every stage it spans; only cuts strictly inside it have any. */
    @Override
    public void segment(int start, int end, double probability) {
        int found = Arrays.binarySearch(cuts, start + 1);
        for (int i = found < 0 ? -found - 1 : found; i < cuts.length && cuts[i] < end; i++) {
            growths.get(i).span(start, end, probability);
        }
    }

    private List<ChangeOver> grown(long[] serials) {
        List<ChangeOver> found = new ArrayList<>();
        int taken = 0;
        for (Growth growth : growths) {
            double[] broken = growth.broken();
            int stage = 0;
            while (broken[stage] < ENOUGH && stage + 1 < broken.length && growth.low[stage + 1] > taken) {
                stage++;
            }
            taken = growth.high[stage];
            found.add(new ChangeOver(serials[growth.low[stage] - 1], serials[taken], broken[stage]));
        }
        return found;
    }
}
