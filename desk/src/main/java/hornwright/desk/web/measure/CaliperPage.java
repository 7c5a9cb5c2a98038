package hornwright.desk.web.measure;

import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.PlacePanel;
import java.util.List;

/**
 * The instrument that types. Question: does what it sends arrive as its display shows it?
 *
 * @param known what is known of it, in a sentence; empty when nothing is
 */
public record CaliperPage(
        Frame frame, String known, String fault, List<Sample> samples, List<PlacePanel.Option> units) {
    public CaliperPage {
        samples = List.copyOf(samples);
        units = List.copyOf(units);
    }

    public record Sample(int n, String shown, String arrived) {}
}
