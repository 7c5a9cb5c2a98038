package hornwright.desk.web.sheets;

import hornwright.desk.web.photo.PhotosOf;
import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.Next;
import hornwright.desk.web.view.PlacePanel;
import java.util.List;

/**
 * Body pins. Question: what is wrong with the metal, where, and what is done about it?
 *
 * @param drawing SVG made by this program, the pins on it
 * @param near spots by name that a pin is set by when it is not set on the drawing
 */
public record BodyPage(
        Frame frame,
        Next next,
        String horn,
        long seq,
        String fresh,
        String drawing,
        String summary,
        List<Pin> pins,
        List<PlacePanel.Option> sorts,
        List<PlacePanel.Option> near,
        List<PlacePanel.Option> accesses,
        List<PlacePanel.Option> choices,
        String fault) {
    public BodyPage {
        pins = List.copyOf(pins);
        sorts = List.copyOf(sorts);
        near = List.copyOf(near);
        accesses = List.copyOf(accesses);
        choices = List.copyOf(choices);
    }

    /** One pin with its number on the drawing. */
    public record Pin(
            int number,
            String id,
            String reading,
            String words,
            String where,
            List<PlacePanel.Option> choices,
            SheetPage.Answer answer,
            PhotosOf photos) {
        public Pin {
            choices = List.copyOf(choices);
        }
    }
}
