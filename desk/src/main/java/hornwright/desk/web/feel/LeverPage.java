package hornwright.desk.web.feel;

import hornwright.desk.web.view.Figure;
import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.Next;
import hornwright.desk.web.view.State;
import java.util.List;

/**
 * One key from the side. Question: how is this key made, and how does it feel, close and come to rest?
 *
 * @param paper the address of the sheet
 * @param drawing at true scale
 * @param figures what the plan says of its places
 * @param curves drawn over axes
 * @param remedies what to do about its closing, least intrusive first
 * @param tries the same key let go with other centres and bumpers; what the maker fitted first
 * @param counted where counted rebounds are posted; empty for a key that no spring opens
 * @param houseSeq what that form must expect
 * @param others the keys of this horn, to go on to
 */
public record LeverPage(
        Frame frame,
        Next next,
        String name,
        String paper,
        String drawing,
        List<Figure> figures,
        List<Curve> curves,
        List<ClosingPage.Remedy> remedies,
        List<Try> tries,
        String counted,
        long houseSeq,
        String fresh,
        List<Other> others) {
    public LeverPage {
        figures = List.copyOf(figures);
        curves = List.copyOf(curves);
        remedies = List.copyOf(remedies);
        tries = List.copyOf(tries);
        others = List.copyOf(others);
    }

    /** A graph with its title, a sentence, and numbers that go with it. */
    public record Curve(String title, String says, String drawing, List<Figure> figures) {
        public Curve {
            figures = List.copyOf(figures);
        }
    }

    /** @param period whether the maker fitted it */
    public record Try(
            String what, boolean period, String curve, State state, Figure opening, Figure rebound, Figure settled) {}

    public record Other(String name, String address, boolean current) {}
}
