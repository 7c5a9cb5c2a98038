package hornwright.desk.web.sheets;

import hornwright.desk.web.measure.MeasurePage;
import hornwright.desk.web.photo.PhotosOf;
import hornwright.desk.web.view.Figure;
import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.Next;
import hornwright.desk.web.view.PlacePanel;
import hornwright.desk.web.view.State;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A bench sheet. Question: what did the bench find here, what follows, and what is done about it?
 *
 * @param sheet its word, as in its address
 * @param notes what holds for the whole of it
 */
public record SheetPage(
        Frame frame,
        Next next,
        String horn,
        long seq,
        String sheet,
        String title,
        String lead,
        String unit,
        String summary,
        List<Section> sections,
        List<String> order,
        List<String> notes,
        List<MeasurePage.Trouble> troubles,
        String fresh) {
    public SheetPage {
        sections = List.copyOf(sections);
        order = List.copyOf(order);
        notes = List.copyOf(notes);
        troubles = List.copyOf(troubles);
    }

    /** A heading with its lines. */
    public record Section(String title, String how, List<Line> lines) {
        public Section {
            lines = List.copyOf(lines);
        }
    }

    /**
     * One thing with its fields and what follows from them.
     *
     * @param photos null where a photograph is taken elsewhere
     */
    public record Line(
            String id,
            String name,
            String address,
            List<Field> fields,
            List<Field> more,
            boolean open,
            Answer answer,
            @Nullable PhotosOf photos) {
        public Line {
            fields = List.copyOf(fields);
            more = List.copyOf(more);
        }
    }

    /** One field; with options it is chosen instead of typed. */
    public record Field(MeasurePage.Cell cell, String label, List<PlacePanel.Option> options) {
        public Field {
            options = List.copyOf(options);
        }
    }

    /**
     * What follows.
     *
     * @param id of the part of the page it stands in
     */
    public record Answer(String id, State state, String says, List<Figure> figures, List<Way> ways) {
        public Answer {
            figures = List.copyOf(figures);
            ways = List.copyOf(ways);
        }
    }

    /** One thing to do. */
    public record Way(String what, String limit, String time, String undo, List<String> cautions) {
        public Way {
            cautions = List.copyOf(cautions);
        }
    }
}
