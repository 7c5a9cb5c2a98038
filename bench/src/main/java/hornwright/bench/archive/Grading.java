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

    /** "well supported (grade B): 3 looks for it, 1 against, from 2 origins". */
    public String inWords() {
        return "%s (grade %s): %s".formatted(grade.word(), grade.letter(), counts());
    }

    /** "3 looks for it, 1 against, from 2 origins". */
    public String counts() {
        return "%d %s for it, %d against, from %d %s"
                .formatted(
                        supporting,
                        supporting == 1 ? "look" : "looks",
                        contradicting,
                        groups,
                        groups == 1 ? "origin" : "origins");
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
