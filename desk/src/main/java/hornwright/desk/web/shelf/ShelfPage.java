package hornwright.desk.web.shelf;

import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.Miniature;
import hornwright.desk.web.view.PlacePanel;
import java.util.List;

/**
 * The horns in the shop. Question: which one now?
 *
 * @param horns each {@link Stand} as it was rendered, perhaps in an earlier run
 * @param ghost the place of the next horn, rendered
 */
public record ShelfPage(Frame frame, String lead, List<String> horns, String ghost, NewHorn form) {
    public ShelfPage {
        horns = List.copyOf(horns);
    }

    /** A horn standing on the board with its tag. */
    public record Stand(
            String address,
            String serial,
            String maker,
            String owner,
            String stage,
            String fact,
            String todo,
            Miniature figure) {}

    /**
     * The form that puts a horn on the shelf; only the pattern is required.
     *
     * @param patterns the choice of patterns, rendered
     */
    public record NewHorn(
            String patterns,
            List<PlacePanel.Option> uses,
            String serial,
            String complaint,
            String fault,
            boolean open,
            String fresh) {
        public NewHorn {
            uses = List.copyOf(uses);
        }
    }
}
