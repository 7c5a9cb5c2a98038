package hornwright.desk.web.archive;

import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.State;
import java.util.List;

/**
 * All that is known of one place at one serial. Question: how do we know?
 *
 * @param facts material, colour, thickness and the rest; each with its word
 * @param chance how likely, with no grade in it
 * @param grade how good the evidence is, with no probability in it
 * @param reasons why that grade
 * @param terms what the probability was made of
 */
public record EvidencePage(
        Frame frame,
        String title,
        String back,
        Ruler ruler,
        List<Fact> facts,
        State grade,
        String gradeWords,
        List<String> reasons,
        String chance,
        List<Fact> terms,
        List<Item> items,
        String search) {
    public EvidencePage {
        facts = List.copyOf(facts);
        reasons = List.copyOf(reasons);
        terms = List.copyOf(terms);
        items = List.copyOf(items);
    }

    public record Fact(String name, String words) {}

    /**
     * A look or a statement.
     *
     * @param witness where the horn it was seen on is told; empty for a statement
     * @param strength "2 of 3"
     * @param why how the strength came about
     * @param aside why it is set aside; empty while it stands
     */
    public record Item(
            String id,
            String serials,
            String witness,
            String saw,
            String how,
            String strength,
            List<String> why,
            String cited,
            String picture,
            boolean against,
            String aside) {
        public Item {
            why = List.copyOf(why);
        }
    }
}
