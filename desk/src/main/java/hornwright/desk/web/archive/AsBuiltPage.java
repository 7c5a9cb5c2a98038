package hornwright.desk.web.archive;

import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.Next;
import hornwright.desk.web.view.PlacePanel;
import hornwright.desk.web.view.State;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What left the factory at one serial. Question: what did the factory intend, and how do we know?
 *
 * @param next null on a page that belongs to no horn on the shelf
 * @param first what to do before looking here; empty when nothing stands against it
 * @param origin how original the horn on the bench is; null when nothing was judged
 * @param offers how many places judged original the archive does not have yet
 * @param paper where it is printed, without the size
 */
public record AsBuiltPage(
        Frame frame,
        @Nullable Next next,
        String title,
        String lead,
        Years.Answer year,
        String first,
        String here,
        Ruler ruler,
        List<Look> looks,
        List<Group> groups,
        @Nullable Origin origin,
        int offers,
        long seq,
        String fresh,
        String paper,
        Asked asked) {
    public AsBuiltPage {
        looks = List.copyOf(looks);
        groups = List.copyOf(groups);
    }

    /** One more look worth taking. */
    public record Look(String words, String gain, String address) {}

    /** What was asked for on the page of any serial; the voice is empty on the page of a horn. */
    public record Asked(List<PlacePanel.Option> voices, String serial, String fault) {
        public Asked {
            voices = List.copyOf(voices);
        }
    }

    /**
     * @param fact how many of its places somebody looked at
     * @param gaps those nobody has
     */
    public record Group(String title, String fact, List<Line> lines, List<Line> gaps, List<Kindred> kindred) {
        public Group {
            lines = List.copyOf(lines);
            gaps = List.copyOf(gaps);
            kindred = List.copyOf(kindred);
        }
    }

    /** Gaps of which the other places of their kind tell the same. */
    public record Kindred(String names, String words) {}

    /**
     * One place. A gap has a material of "".
     *
     * @param rest adhesive, shape and cut, as far as known
     * @param kind what other places of its kind tell where few horns were looked at; mostly empty
     */
    public record Line(
            String name,
            String address,
            String material,
            String colour,
            String thickness,
            String rest,
            State grade,
            String kind) {}

    /** The statement of originality. */
    public record Origin(String opening, List<String> stamps, List<Said> lines, List<String> forOwner, String left) {
        public Origin {
            stamps = List.copyOf(stamps);
            forOwner = List.copyOf(forOwner);
            lines = List.copyOf(lines);
        }
    }

    public record Said(String what, String words, State verdict) {}
}
