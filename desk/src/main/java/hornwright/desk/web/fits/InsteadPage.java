package hornwright.desk.web.fits;

import hornwright.desk.web.feel.LeverPage;
import hornwright.desk.web.view.Figure;
import hornwright.desk.web.view.FitLine;
import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.State;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One place whose part is missing, or might be: what fits, and what else could lie there. Question: what fits here, and
 * what would each change?
 *
 * @param place its id
 * @param fits parts that are said to go there; empty when nobody has said so
 * @param built what the maker put there; null where nothing is cut to size
 * @param others what could lie there instead, what belongs there most first
 * @param tries for a pad centre: other centres let go
 * @param wires for a spring: one size down and up
 * @param none what to say where nothing can be reckoned; empty otherwise
 */
public record InsteadPage(
        Frame frame,
        String horn,
        String place,
        String title,
        String state,
        String panel,
        boolean asked,
        String size,
        List<FitLine> fits,
        @Nullable Row built,
        List<Row> others,
        List<LeverPage.Try> tries,
        List<Figure> wires,
        String none,
        long seq,
        String fresh) {
    public InsteadPage {
        fits = List.copyOf(fits);
        others = List.copyOf(others);
        tries = List.copyOf(tries);
        wires = List.copyOf(wires);
    }

    /**
     * One material at the place.
     *
     * @param curve the key let go on it; empty where no key lands
     * @param ghost the same on what the maker fitted
     * @param changes what is otherwise, in words
     */
    public record Row(
            String material,
            State belongs,
            String look,
            String undone,
            String shelf,
            String curve,
            String ghost,
            List<Figure> figures,
            String changes) {
        public Row {
            figures = List.copyOf(figures);
        }
    }
}
