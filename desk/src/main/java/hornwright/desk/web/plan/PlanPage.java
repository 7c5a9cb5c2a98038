package hornwright.desk.web.plan;

import hornwright.desk.web.view.Figure;
import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.MissingPart;
import hornwright.desk.web.view.Next;
import hornwright.desk.web.view.State;
import java.util.List;

/** The plan as rows of facts. Question: what goes on this horn, of what size, and why? */
public record PlanPage(
        Frame frame,
        Next next,
        String horn,
        List<Caution> cautions,
        List<MissingPart> bare,
        List<PadRow> pads,
        List<CutRow> cuts,
        List<DayOne> dayOne,
        List<Order> afterTrial,
        List<Order> orders,
        List<Ask> asks,
        List<Cost> costs,
        String costNote) {
    public PlanPage {
        cautions = List.copyOf(cautions);
        pads = List.copyOf(pads);
        cuts = List.copyOf(cuts);
        dayOne = List.copyOf(dayOne);
        afterTrial = List.copyOf(afterTrial);
        orders = List.copyOf(orders);
        asks = List.copyOf(asks);
        costs = List.copyOf(costs);
    }

    private static final int FIRST = 10;

    public List<Ask> firstAsks() {
        return asks.subList(0, Math.min(FIRST, asks.size()));
    }

    public List<Ask> otherAsks() {
        return asks.subList(Math.min(FIRST, asks.size()), asks.size());
    }

    /** Things of one sort to know before going on. */
    public record Caution(String sort, List<String> words) {
        public Caution {
            words = List.copyOf(words);
        }
    }

    /** One cup. A number that is not there yet is an empty list; {@code waits} then says what for. */
    public record PadRow(
            String name,
            String address,
            List<Figure> diameter,
            List<Figure> thickness,
            List<Figure> chosen,
            String waits,
            State state) {}

    public record CutRow(
            String name,
            String address,
            String material,
            String form,
            List<Figure> cut,
            List<Figure> sheet,
            List<Figure> finish,
            String method) {}

    /** Pads of one diameter, ordered before their thickness is known. */
    public record DayOne(String diameter, String count, String places) {}

    public record Order(String goods, String size, String need, String shelf, String order, String note) {}

    /** A reading nobody has taken, what it decides, and where to type it; no address when it is a look. */
    public record Ask(String measure, String decides, String seconds, String address) {}

    public record Cost(String words, List<Figure> hours) {}
}
