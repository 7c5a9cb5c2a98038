package hornwright.engines.belief;

import hornwright.engines.belief.BeliefAnswer.ChangeAfter;
import hornwright.engines.belief.WorkshopAnswer.At;
import hornwright.engines.belief.WorkshopAnswer.Spell;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Front door: what did a works put in along its serial numbers, when it may have used materials side by side and those who
 * look may be deceived?
 *
 * <p>Two things that look alike are kept apart. A works with the habit of mixing puts different materials into different
 * horns; a look that errs shows another material than was put in. Many exceptions in one stretch speak for the first,
 * single ones for the second. Exact to rounding over all courses the works may have taken; time grows with the number of
 * positions.
 */
public final class WorkshopBelief {
    private final List<String> materials;
    private final Positions seen;
    private final Laws laws;
    private final Weighed courses;

    private WorkshopBelief(WorkshopQuestion question) {
        materials = question.materials();
        seen = new Positions(question.observations(), materials);
        laws = new Laws(materials.size(), question.assumed().mixing());
        courses = new Weighed(seen, laws, question.assumed());
    }

    public static WorkshopAnswer of(WorkshopQuestion question) {
        return new WorkshopBelief(question).answer(question.at());
    }

    /** Only what is asked of single serials. */
    public static List<At> at(WorkshopQuestion question) {
        WorkshopBelief belief = new WorkshopBelief(question);
        return question.at().stream().map(belief::at).toList();
    }

    /** Natural logarithm of the probability of what was seen. */
    public static double logEvidence(WorkshopQuestion question) {
        return new WorkshopBelief(question).courses.logEvidence();
    }

    private WorkshopAnswer answer(List<Long> at) {
        double[] changed = courses.changedBefore();
        List<ChangeAfter> after = new ArrayList<>();
        for (int i = 1; i < changed.length; i++) {
            after.add(new ChangeAfter(seen.serials[i - 1], changed[i]));
        }
        Spells spells = Spells.of(courses, laws, seen.size());
        return new WorkshopAnswer(
                courses.logEvidence(),
                after,
                named(spells),
                at.stream().map(this::at).toList(),
                new Spans(courses, changed, seen.serials).around(spells.start()));
    }

    private List<Spell> named(Spells spells) {
        List<Spell> named = new ArrayList<>();
        int[] start = spells.start();
        for (int i = 0; i < start.length; i++) {
            int end = i + 1 < start.length ? start[i + 1] : seen.size();
            named.add(new Spell(
                    seen.serials[start[i]],
                    seen.serials[end - 1],
                    named(spells.shares().get(i)),
                    spells.mixed()[i]));
        }
        return named;
    }

    private At at(long serial) {
        if (seen.size() == 0) {
            return unseen(serial, laws.prior, Standing.EXTRAPOLATED);
        }
        int found = Arrays.binarySearch(seen.serials, serial);
        if (found >= 0) {
            double[] chances = courses.chances(found);
            Map<String, Double> shares = named(laws.sharesUnder(chances));
            return new At(serial, named(courses.horn(found)), shares, laws.mixed(chances), Standing.OBSERVED);
        }
        int above = -found - 1;
        if (above == 0 || above == seen.size()) {
            return unseen(serial, courses.chances(Math.min(above, seen.size() - 1)), Standing.EXTRAPOLATED);
        }
        double below = seen.serials[above - 1];
        double share = (serial - below) / (seen.serials[above] - below);
        double[] chances = courses.chances(above - 1);
        double[] high = courses.chances(above);
        for (int z = 0; z < chances.length; z++) {
            chances[z] = (1 - share) * chances[z] + share * high[z];
        }
        return unseen(serial, chances, Standing.INTERPOLATED);
    }

    /** Of a horn nobody has seen nothing is known but its time. */
    private At unseen(long serial, double[] chances, Standing standing) {
        Map<String, Double> shares = named(laws.sharesUnder(chances));
        return new At(serial, shares, shares, laws.mixed(chances), standing);
    }

    private Map<String, Double> named(double[] values) {
        Map<String, Double> named = new LinkedHashMap<>();
        for (int k = 0; k < values.length; k++) {
            named.put(materials.get(k), values[k]);
        }
        return named;
    }
}
