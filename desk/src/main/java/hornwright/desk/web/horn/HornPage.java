package hornwright.desk.web.horn;

import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.Next;
import hornwright.desk.web.view.PlacePanel;
import hornwright.desk.web.view.State;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The horn itself, unrolled. Question: what is this spot, and how does it stand?
 *
 * @param drawing SVG made by this program
 * @param place the place that is open; null when none is
 */
public record HornPage(
        Frame frame,
        String horn,
        Next next,
        String drawing,
        String layer,
        String caption,
        List<LayerChoice> layers,
        List<Part> parts,
        Seek seek,
        List<Sample> legend,
        List<Group> groups,
        @Nullable PlacePanel place) {
    public HornPage {
        layers = List.copyOf(layers);
        parts = List.copyOf(parts);
        legend = List.copyOf(legend);
        groups = List.copyOf(groups);
    }

    public record LayerChoice(String word, String label, String address, boolean current) {}

    /**
     * A part of the drawing that may fill the screen.
     *
     * @param box left, top, width and height on the sheet
     */
    public record Part(String title, String address, String box, boolean current) {}

    /** What was asked for by name, and the places that answer to it. */
    public record Seek(String asked, String told, List<Hit> hits) {
        public Seek {
            hits = List.copyOf(hits);
        }
    }

    public record Hit(String name, String group, String address) {}

    /** One entry of the legend: a material by its pattern, a state by its icon, or a step of numbers by its colour. */
    public record Sample(String sort, String word, String label) {}

    /** The list beside the drawing, which says everything the drawing shows. */
    public record Group(String title, List<Line> lines) {
        public Group {
            lines = List.copyOf(lines);
        }
    }

    public record Line(String place, String name, String address, String material, State state, boolean current) {}
}
