package hornwright.desk.web.photo;

import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.Next;
import hornwright.desk.web.view.PhotoForm;
import hornwright.desk.web.view.PhotoPrint;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The photographs of a horn. Question: how did it look, and how does it look now?
 *
 * @param compared the subject that is laid side by side; null while there is no photograph
 * @param places photographs of single places, and of nothing on the list
 */
public record PhotosPage(
        Frame frame,
        Next next,
        String horn,
        String fact,
        String said,
        @Nullable Pair compared,
        List<Group> groups,
        List<Card> places,
        PhotoForm form,
        String subject,
        String back) {
    public PhotosPage {
        groups = List.copyOf(groups);
        places = List.copyOf(places);
    }

    /** One subject before and after; a side nobody photographed is null. */
    public record Pair(
            String title,
            @Nullable PhotoPrint before,
            @Nullable PhotoPrint now,
            String missing) {}

    /** One subject that was photographed. */
    public record Card(String title, String address, PhotoPrint print, String fact) {}

    /** One that is still to be taken, and where it is put in. */
    public record Wanted(String title, String address) {}

    public record Group(String title, String fact, List<Card> cards, List<Wanted> wanted) {
        public Group {
            cards = List.copyOf(cards);
            wanted = List.copyOf(wanted);
        }
    }
}
