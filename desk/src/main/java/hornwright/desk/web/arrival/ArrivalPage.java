package hornwright.desk.web.arrival;

import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.Miniature;
import hornwright.desk.web.view.Next;
import hornwright.desk.web.view.PlacePanel;
import hornwright.desk.web.view.State;
import java.util.List;

/**
 * What came through the door. Question: whose horn is this, what is it for, and what must be caught before a screw is
 * turned?
 *
 * @param figure the horn standing small, as on the shelf
 * @param path the ten minutes that make every other page useful
 * @param baseline what can only be had before strip-down
 * @param stripped whether it is too late for that
 */
public record ArrivalPage(
        Frame frame,
        Next next,
        String horn,
        long seq,
        String fresh,
        Miniature figure,
        List<Part> path,
        List<Part> baseline,
        boolean stripped,
        Who who,
        Which which,
        Shots shots) {
    public ArrivalPage {
        path = List.copyOf(path);
        baseline = List.copyOf(baseline);
    }

    /** One part of a path: how far it is, what it pays, where it is done. */
    public record Part(State state, String title, String fact, String pays, String address) {}

    /** Where what the owner complains of is looked into. */
    public record Way(String title, String address) {}

    /**
     * @param ways pages the complaint leads to
     * @param uses what the horn may be for
     */
    public record Who(
            String name,
            String telephone,
            String email,
            String complaint,
            List<Way> ways,
            List<PlacePanel.Option> uses,
            String said,
            String fault) {
        public Who {
            ways = List.copyOf(ways);
            uses = List.copyOf(uses);
        }
    }

    /** @param patterns empty once something was written down that hangs on the pattern */
    public record Which(
            String maker,
            String serial,
            List<PlacePanel.Option> patterns,
            List<Choice> switches,
            boolean open,
            String fault) {
        public Which {
            patterns = List.copyOf(patterns);
            switches = List.copyOf(switches);
        }
    }

    public record Choice(String name, String label, List<PlacePanel.Option> options) {
        public Choice {
            options = List.copyOf(options);
        }
    }

    /** The photograph list; it answers alone when a tick is set. */
    public record Shots(String horn, long seq, String fresh, String fact, String said, List<Group> groups) {
        public Shots {
            groups = List.copyOf(groups);
        }

        public record Group(String title, List<Line> lines) {
            public Group {
                lines = List.copyOf(lines);
            }
        }

        public record Line(String id, String words, boolean taken) {}
    }
}
