package hornwright.engines.belief;

import hornwright.engines.belief.BeliefAnswer.At;
import hornwright.engines.belief.BeliefAnswer.ChangeAfter;
import hornwright.engines.belief.BeliefAnswer.Segment;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Front door: when did a material change along the serial numbers, and what was there at a serial nobody has seen?
 *
 * <p>The answer is exact over all 2^(n−1) ways of cutting the line into segments. Inside a segment the chance of a
 * material is (prior + its count) / (K prior + total). Between two neighbouring serials a change is equally likely
 * anywhere, which makes the averaged answer a straight line between those at the neighbours.
 */
public final class Belief {
    private Belief() {}

    public static BeliefAnswer of(BeliefQuestion question) {
        Positions seen = new Positions(question.observations(), question.materials());
        Segmentations all = new Segmentations(new DirichletEvidence(seen, question.prior()), question.change());
        Chances chances = new Chances(seen, question.prior());
        double[] cutBefore = all.walk(chances);
        int[] cuts = all.bestCuts();
        return new BeliefAnswer(
                all.logEvidence(),
                Arrays.stream(all.changes()).boxed().toList(),
                changeAfter(seen, cutBefore),
                best(seen, cuts),
                at(question, seen, chances.byPosition()),
                ChangeOvers.around(cuts, cutBefore, all, seen.serials));
    }

    private static List<ChangeAfter> changeAfter(Positions seen, double[] cutBefore) {
        List<ChangeAfter> after = new ArrayList<>();
        for (int i = 1; i < seen.size(); i++) {
            after.add(new ChangeAfter(seen.serials[i - 1], cutBefore[i]));
        }
        return after;
    }

    private static List<Segment> best(Positions seen, int[] cuts) {
        List<Segment> segments = new ArrayList<>();
        int start = 0;
        for (int i = 0; i <= cuts.length && seen.size() > 0; i++) {
            int end = i < cuts.length ? cuts[i] : seen.size();
            segments.add(new Segment(seen.serials[start], seen.serials[end - 1], seen.counts(start, end)));
            start = end;
        }
        return segments;
    }

    private static List<At> at(BeliefQuestion question, Positions seen, double[][] byPosition) {
        return question.at().stream()
                .map(serial -> at(serial, question.materials(), seen.serials, byPosition))
                .toList();
    }

    private static At at(long serial, List<String> materials, long[] serials, double[][] byPosition) {
        int found = Arrays.binarySearch(serials, serial);
        int above = found >= 0 ? found : -found - 1;
        if (serials.length == 0) {
            double even = 1.0 / materials.size();
            return new At(serial, named(materials, even, new double[0], new double[0], 0), Standing.EXTRAPOLATED);
        }
        if (found >= 0 || above == 0 || above == serials.length) {
            double[] nearest = byPosition[Math.min(above, serials.length - 1)];
            return new At(
                    serial,
                    named(materials, 0, nearest, nearest, 0),
                    found >= 0 ? Standing.OBSERVED : Standing.EXTRAPOLATED);
        }
        double below = serials[above - 1];
        double share = (serial - below) / (serials[above] - below);
        return new At(
                serial, named(materials, 0, byPosition[above - 1], byPosition[above], share), Standing.INTERPOLATED);
    }

    private static Map<String, Double> named(
            List<String> materials, double even, double[] below, double[] above, double share) {
        Map<String, Double> named = new LinkedHashMap<>();
        for (int k = 0; k < materials.size(); k++) {
            named.put(materials.get(k), below.length == 0 ? even : (1 - share) * below[k] + share * above[k]);
        }
        return named;
    }
}
