package hornwright.desk.web.view;

import java.util.List;

/**
 * How the pads close. Question: which pads will leak at a light touch, and what comes first?
 *
 * @param rims what the answer rests on, in words
 * @param total leak and hole of all pads together; empty for a horn without pads
 * @param notIn what the total leaves out, in words
 */
public record ClosingPage(
        Frame frame, Next next, String rims, String measure, List<Figure> total, String notIn, List<Pad> pads) {
    public ClosingPage {
        total = List.copyOf(total);
        pads = List.copyOf(pads);
    }

    /**
     * One pad.
     *
     * @param clock where its worst gap is; empty when there is none
     * @param length of its bar, in per cent of the force the hardest pad takes, {@code light} where a light touch ends
     * @param helps the remedy that leaves the least leak, in words; empty when none is called for
     * @param told the force against what there is: more at the touch, or times the springs hold
     */
    public record Pad(
            String name,
            String address,
            State state,
            Figure gap,
            String clock,
            Figure leak,
            Figure seals,
            String length,
            List<Figure> told,
            String helps,
            List<Remedy> remedies) {
        public Pad {
            told = List.copyOf(told);
            remedies = List.copyOf(remedies);
        }
    }

    /** One thing to do: what it leads to, what it takes, what cannot be taken back, what to mind. */
    public record Remedy(String words, List<Figure> after, String cost, String reversible, List<String> cautions) {
        public Remedy {
            after = List.copyOf(after);
            cautions = List.copyOf(cautions);
        }
    }
}
