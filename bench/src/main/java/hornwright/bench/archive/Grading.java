package hornwright.bench.archive;

import java.util.ArrayList;
import java.util.List;

/**
 * A grade with what it was counted from.
 *
 * @param supporting items for the claim
 * @param contradicting items against it, resolved ones included
 * @param groups independent origins on both sides
 * @param reasons the rule that decided, then each step away from it
 * @param rules version of the rules
 */
public record Grading(Grade grade, int supporting, int contradicting, int groups, List<String> reasons, int rules) {
    public Grading {
        reasons = List.copyOf(reasons);
    }

    /** "B · well supported · 3 for, 1 against, 2 groups". */
    public String inWords() {
        return grade.letter() + " · " + grade.word() + " · " + supporting + " for, " + contradicting + " against, "
                + groups + (groups == 1 ? " group" : " groups");
    }

    Grading with(Grade other, String reason) {
        if (other == grade) {
            return this;
        }
        List<String> more = new ArrayList<>(reasons);
        more.add(reason);
        return new Grading(other, supporting, contradicting, groups, more, rules);
    }
}
