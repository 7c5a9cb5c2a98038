package hornwright.desk.web.view;

import java.util.List;

/** The horns in the shop. Question: which one now? */
public record ShelfPage(Frame frame, String lead, String sought, List<Stand> horns, Miniature ghost, NewHorn form) {
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

    /** The form that puts a horn on the shelf; only the pattern is required. */
    public record NewHorn(
            List<PlacePanel.Option> patterns,
            List<PlacePanel.Option> uses,
            String serial,
            String complaint,
            String fault,
            boolean open,
            String fresh) {
        public NewHorn {
            patterns = List.copyOf(patterns);
            uses = List.copyOf(uses);
        }
    }
}
