package hornwright.desk.web.archive;

import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.MissingPart;
import hornwright.desk.web.view.Next;
import hornwright.desk.web.view.PlacePanel;
import hornwright.desk.web.view.State;
import java.util.List;

/**
 * What stays and what goes, least intrusive first. Question: what do you decide here, and why?
 *
 * @param missing places found bare
 * @param sets pads that close together and would not match
 */
public record KeepPage(
        Frame frame,
        Next next,
        String horn,
        String lead,
        List<MissingPart> missing,
        List<Set> sets,
        List<Part> parts,
        List<PlacePanel.Option> treatments,
        List<String> faults,
        String said,
        long seq,
        String key) {
    public KeepPage {
        missing = List.copyOf(missing);
        sets = List.copyOf(sets);
        parts = List.copyOf(parts);
        treatments = List.copyOf(treatments);
        faults = List.copyOf(faults);
    }

    /** @param places ids with commas */
    public record Set(String words, String places) {}

    /** All that is proposed of one sort. */
    public record Part(String word, String title, String fact, boolean open, List<Line> lines) {
        public Part {
            lines = List.copyOf(lines);
        }
    }

    /**
     * Places alike in everything.
     *
     * @param what "9 feet"
     * @param note what else is to be known: what later repairers commonly use
     * @param decided whether a person settled it
     */
    public record Line(
            String id,
            String what,
            String found,
            String built,
            State grade,
            String why,
            String note,
            String undo,
            boolean decided,
            List<PlacePanel.Option> places) {
        public Line {
            places = List.copyOf(places);
        }
    }
}
