package hornwright.desk.web.view;

import hornwright.bench.plan.Because;
import hornwright.bench.plan.Becauses;
import java.util.List;

/**
 * Why a number is so, as a sum written by hand: the rule, the terms it was made of, and where each comes from.
 *
 * @param ground what a leaf rests on, in a word or two; empty when there are terms
 */
public record Reasons(String rule, String ground, List<Term> terms) {
    public Reasons {
        terms = List.copyOf(terms);
    }

    /** One term with its own because: followed further when it is reckoned itself. */
    public record Term(String name, String value, String unit, String uncertainty, String source, String because) {}

    public static Reasons of(String horn, Becauses becauses, String id) {
        Because because = becauses.get(id);
        return new Reasons(
                because.rule(),
                because instanceof Because.Leaf leaf ? leaf.kind() : "",
                because.inputs().stream()
                        .map(input -> term(horn, becauses, input))
                        .toList());
    }

    private static Term term(String horn, Becauses becauses, Because.Input input) {
        return new Term(
                input.name(),
                Written.value(input.value(), input.u()),
                input.unit(),
                Written.uncertainty(input.u()),
                becauses.source(input.because()),
                Figure.because(horn, input.because()));
    }
}
