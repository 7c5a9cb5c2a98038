package hornwright.desk.web.plan;

import hornwright.bench.plan.Because;
import hornwright.bench.plan.Becauses;
import hornwright.desk.web.view.Figure;
import hornwright.desk.web.view.Written;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Why a number is so, as a sum written by hand: the rule, the terms it was made of, and where each comes from.
 *
 * @param ground what a leaf rests on, in a word or two; empty when there are terms
 * @param before the because that was read before this one; null for the first
 */
public record Reasons(
        String rule,
        String ground,
        List<Term> terms,
        @Nullable Before before) {
    private static final int FEW = 44;

    public Reasons {
        terms = List.copyOf(terms);
    }

    /** One term with its own because: followed further when it is reckoned itself. */
    public record Term(String name, String value, String unit, String uncertainty, String source, String because) {}

    /** The way back to the because read before, said by the beginning of its rule. */
    public record Before(String words, String address) {}

    /** @param read the ids that were read on the way here, the last one last; all of them are in the table */
    public static Reasons of(String horn, Becauses becauses, String id, List<String> read) {
        List<String> onward = Stream.concat(read.stream(), Stream.of(id)).toList();
        Because because = becauses.get(id);
        return new Reasons(
                because.rule(),
                because instanceof Because.Leaf leaf ? leaf.kind() : "",
                because.inputs().stream()
                        .map(input -> term(horn, becauses, input, onward))
                        .toList(),
                before(horn, becauses, read));
    }

    private static @Nullable Before before(String horn, Becauses becauses, List<String> read) {
        if (read.isEmpty()) {
            return null;
        }
        String last = read.getLast();
        return new Before(
                shortened(becauses.get(last).rule()), Figure.because(horn, last, read.subList(0, read.size() - 1)));
    }

    private static String shortened(String rule) {
        if (rule.length() <= FEW) {
            return rule;
        }
        int space = rule.lastIndexOf(' ', FEW);
        return rule.substring(0, space > 0 ? space : FEW) + "…";
    }

    private static Term term(String horn, Becauses becauses, Because.Input input, List<String> read) {
        return new Term(
                input.name(),
                Written.value(input.value(), input.u()),
                input.unit(),
                Written.uncertainty(input.u()),
                becauses.source(input.because()),
                Figure.because(horn, input.because(), read));
    }
}
