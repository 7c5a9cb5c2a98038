package hornwright.desk.web.fits;

import hornwright.desk.web.view.FitLine;
import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.PlacePanel;
import java.util.List;

/**
 * What fits what. Question: which part goes where on such a horn, and who has tried it?
 *
 * @param axis the serials all bars run over
 */
public record FitsPage(
        Frame frame,
        String lead,
        String axis,
        List<FitLine> lines,
        Form form,
        List<String> faults,
        long seq,
        String fresh) {
    public FitsPage {
        lines = List.copyOf(lines);
        faults = List.copyOf(faults);
    }

    /** What the form offers, and what stands in it. */
    public record Form(
            List<PlacePanel.Option> kinds,
            List<PlacePanel.Option> voices,
            List<PlacePanel.Option> strokes,
            List<PlacePanel.Option> stances,
            List<PlacePanel.Option> means,
            List<PlacePanel.Option> hands,
            List<PlacePanel.Option> bearings,
            List<PlacePanel.Option> interests,
            String part,
            String size,
            String from,
            String to,
            String origin,
            String citation,
            String file,
            String where,
            String terms,
            String when) {}
}
