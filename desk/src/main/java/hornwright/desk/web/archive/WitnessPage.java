package hornwright.desk.web.archive;

import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.PlacePanel;
import java.util.List;

/**
 * A horn somebody looked at, and what was seen on it. Question: what do you see, and how do you see it? Nothing of what
 * the factory is thought to have used stands here, so that nobody finds what he expects.
 *
 * @param drawing the horn unrolled, with what was said of each place so far
 * @param like horns to begin from
 * @param faults what is wrong with what was sent; nothing was kept then
 */
public record WitnessPage(
        Frame frame,
        String id,
        String title,
        String fact,
        Facts facts,
        String drawing,
        How how,
        List<PlacePanel.Option> like,
        List<Group> groups,
        List<String> faults,
        String said,
        long seq,
        String fresh) {
    public WitnessPage {
        like = List.copyOf(like);
        groups = List.copyOf(groups);
        faults = List.copyOf(faults);
    }

    /** Which horn it is. */
    public record Facts(
            String serial,
            List<PlacePanel.Option> voices,
            String model,
            String built,
            List<PlacePanel.Option> integrities,
            String stamps) {}

    /** How the looks of this sitting came about. */
    public record How(
            List<PlacePanel.Option> means,
            List<PlacePanel.Option> hands,
            List<PlacePanel.Option> bearings,
            List<PlacePanel.Option> interests,
            String origin,
            String citation,
            String file) {}

    public record Group(String word, String title, String fact, List<Stroke> strokes) {
        public Group {
            strokes = List.copyOf(strokes);
        }
    }

    /**
     * One kind of place in one group.
     *
     * @param seen what was said before, in words; mostly empty
     */
    public record Stroke(
            String name,
            String title,
            String count,
            String seen,
            List<PlacePanel.Option> materials,
            String other,
            String colour,
            String thickness,
            String adhesive,
            List<PlacePanel.Option> shapes,
            List<PlacePanel.Option> cuts,
            List<PlacePanel.Option> places) {
        public Stroke {
            materials = List.copyOf(materials);
            shapes = List.copyOf(shapes);
            cuts = List.copyOf(cuts);
            places = List.copyOf(places);
        }
    }
}
