package hornwright.desk.web.photo;

import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.Next;
import hornwright.desk.web.view.PhotoForm;
import java.util.List;

/** Removed originals. Question: what was taken off and kept, and where does it lie? */
public record KeptPage(
        Frame frame,
        Next next,
        String horn,
        String said,
        String fault,
        long seq,
        String fresh,
        List<Bag> bags,
        List<Group> coming,
        List<PhotoForm.Section> places,
        String store) {
    public KeptPage {
        bags = List.copyOf(bags);
        coming = List.copyOf(coming);
        places = List.copyOf(places);
    }

    /** A bag that is put by. */
    public record Bag(String place, String name, String address, String what, String store, String when) {}

    /** Originals of one group of keys that come off and are not yet put by. */
    public record Group(String title, List<Part> parts) {
        public Group {
            parts = List.copyOf(parts);
        }
    }

    public record Part(String place, String name, String what) {}
}
