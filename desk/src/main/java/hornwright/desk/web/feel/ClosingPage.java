package hornwright.desk.web.feel;

import hornwright.desk.web.view.Figure;
import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.Next;
import hornwright.desk.web.view.State;
import java.util.List;

/**
 * How the pads close. Question: which pads will leak at a light touch, and what comes first?
 *
 * @param rims what the answer rests on, in words
 * @param total leak and hole of all pads together; empty for a horn without pads
 * @param classes what soft, medium and firm pads would come to
 * @param notIn what the total leaves out, in words
 */
public record ClosingPage(
        Frame frame,
        Next next,
        String rims,
        String measure,
        List<Figure> total,
        String notIn,
        PadClasses classes,
        List<Pad> pads) {
    public ClosingPage {
        total = List.copyOf(total);
        pads = List.copyOf(pads);
    }

    /**
     * The class of all pads that have none of their own.
     *
     * @param settled whether a person chose it
     */
    public record PadClasses(String action, String why, boolean settled, long seq, String key, List<OfClass> rows) {
        public PadClasses {
            rows = List.copyOf(rows);
        }
    }

    /** One class: how many pads would close, and what it costs. */
    public record OfClass(String word, String label, boolean now, String closes, String price) {}

    /**
     * One pad.
     *
     * @param padClass "soft pad" where that was settled for this pad alone; empty otherwise
     * @param compromise said of a soft pad over a bad rim; empty otherwise
     * @param clock where its worst gap is; empty when there is none
     * @param length of its bar, in per cent of the force the hardest pad takes, {@code light} where a light touch ends
     * @param helps the remedy that leaves the least leak, in words; empty when none is called for
     * @param told the force against what there is: more at the touch, or times the springs hold
     */
    public record Pad(
            String name,
            String address,
            String padClass,
            String compromise,
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
