package hornwright.desk.web.plan;

import hornwright.desk.web.measure.MeasurePage;
import hornwright.desk.web.view.Figure;
import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.Next;
import hornwright.desk.web.view.State;
import java.util.List;

/** Regulation. Question: which contacts close apart, and what do I add or take? */
public record LinksPage(
        Frame frame,
        Next next,
        String horn,
        long seq,
        String fresh,
        String unit,
        List<SetRow> sets,
        Todo todo,
        FirstAssembly assembly,
        Packed packed,
        List<MeasurePage.Trouble> troubles) {
    public LinksPage {
        sets = List.copyOf(sets);
        troubles = List.copyOf(troubles);
    }

    /** What one finger closes: the drawing, and a field for every spot. */
    public record SetRow(String id, String title, String svg, List<SpotRow> spots) {
        public SetRow {
            spots = List.copyOf(spots);
        }
    }

    /**
     * One spot.
     *
     * @param id of what follows beside the field
     * @param then gap once the work is done; empty while not known
     */
    public record SpotRow(MeasurePage.Cell cell, String name, String id, State state, List<Figure> then) {
        public SpotRow {
            then = List.copyOf(then);
        }
    }

    /**
     * What to do.
     *
     * @param sum one sentence
     * @param proposed contacts to alter by the readings as they stand
     * @param settled contacts whose change was accepted and is to be done
     * @param ahead whether this is only what would follow
     */
    public record Todo(
            String horn,
            long seq,
            String fresh,
            String sum,
            List<Line> proposed,
            List<Settled> settled,
            boolean ahead) {
        public Todo {
            proposed = List.copyOf(proposed);
            settled = List.copyOf(settled);
        }
    }

    /** One contact with what is done; {@code after} says what must be felt or looked at again. */
    public record Line(String name, String address, String work, List<Figure> amounts, String told, String after) {
        public Line {
            amounts = List.copyOf(amounts);
        }
    }

    /**
     * A change that was accepted and is to be done.
     *
     * @param stale why it no longer stands; empty while it does
     * @param page where it is settled and done
     */
    public record Settled(
            String link, String name, String words, String why, String after, String stale, String page, String key) {}

    /** What cutting to plan alone would come to. */
    public record FirstAssembly(Figure allClosed, Figure largest, String worst, List<Worth> worth) {
        public FirstAssembly {
            worth = List.copyOf(worth);
        }
    }

    /**
     * Where all comes to once new material has packed.
     *
     * @param sum one sentence
     * @param gaps that most likely open
     * @param stays how many others stay shut, in words; empty when none
     */
    public record Packed(
            String sum,
            List<PackedContact> contacts,
            List<PackedGap> gaps,
            String stays,
            List<PackedVent> vents,
            List<PackedHeight> heights,
            Figure days,
            Figure over,
            String handOver) {
        public Packed {
            contacts = List.copyOf(contacts);
            gaps = List.copyOf(gaps);
            vents = List.copyOf(vents);
            heights = List.copyOf(heights);
        }
    }

    public record PackedContact(String name, String address, Figure loses) {}

    public record PackedGap(String name, Figure opens, Figure gap, State state) {}

    public record PackedVent(String name, Figure opens, Figure less) {}

    public record PackedHeight(String name, Figure set, Figure settled, Figure rises) {}

    public record Worth(String name, Figure allClosed, Figure meanGap) {}

    /** The parts a typed value changes. */
    public record LivePart(
            long seq, boolean ahead, Next next, List<SetRow> sets, List<MeasurePage.Cell> cells, Todo todo) {}
}
