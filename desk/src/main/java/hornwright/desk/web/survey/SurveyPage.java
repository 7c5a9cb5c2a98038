package hornwright.desk.web.survey;

import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.MissingPart;
import hornwright.desk.web.view.Next;
import hornwright.desk.web.view.PlacePanel;
import java.util.List;

/**
 * What is on this horn, painted group by group. Question: what do you see? What the factory fitted is kept off this page,
 * so that nobody finds what he expects.
 */
public record SurveyPage(
        Frame frame,
        Next next,
        String horn,
        long seq,
        List<Group> groups,
        List<MissingPart> missing,
        String said,
        String fresh) {
    public SurveyPage {
        groups = List.copyOf(groups);
    }

    /** One stroke after it was saved, to stand where it stood. */
    public record Painted(String horn, long seq, Stroke stroke, String said, String fresh) {}

    public record Group(String word, String title, String fact, List<Stroke> strokes) {
        public Group {
            strokes = List.copyOf(strokes);
        }
    }

    /**
     * One kind of place in one group, painted with one material.
     *
     * @param count "6 places"
     * @param said what was found, in words; empty when nobody has looked
     * @param also other materials seen among them
     * @param others groups with the same kind of place that nobody has looked at yet
     */
    public record Stroke(
            String id,
            String group,
            String kind,
            String title,
            String count,
            String said,
            List<PlacePanel.Option> materials,
            List<PlacePanel.Option> conditions,
            String also,
            String missing,
            String thickness,
            int others,
            String fault) {
        public Stroke {
            materials = List.copyOf(materials);
            conditions = List.copyOf(conditions);
        }
    }
}
