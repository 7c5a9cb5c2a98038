package hornwright.desk.web.view;

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
        PutForm form) {
    public PhotosPage {
        groups = List.copyOf(groups);
        places = List.copyOf(places);
    }

    /** One subject before and after; a side nobody photographed is null. */
    public record Pair(
            String title, @Nullable Print before, @Nullable Print now, String missing) {}

    /** A photograph as it is shown: where it opens, which file, its size, what a listener hears, and a line under it. */
    public record Print(String address, String file, String small, int width, int height, String alt, String line) {
        /** The address of a small copy is enough in a list. */
        public String smallAddress() {
            return "/photo/" + small;
        }

        public String fileAddress() {
            return "/photo/" + file;
        }
    }

    /** One subject that was photographed. */
    public record Card(String title, String address, Print print, String fact) {}

    /** One that is still to be taken, and where it is put in. */
    public record Wanted(String title, String address) {}

    public record Group(String title, String fact, List<Card> cards, List<Wanted> wanted) {
        public Group {
            cards = List.copyOf(cards);
            wanted = List.copyOf(wanted);
        }
    }

    /** Where a photograph is put in. */
    public record PutForm(
            String action,
            String back,
            long seq,
            String fresh,
            String place,
            List<Section> shots,
            List<PlacePanel.Option> moments) {
        public PutForm {
            shots = List.copyOf(shots);
            moments = List.copyOf(moments);
        }
    }

    /** Shots that are photographed together. */
    public record Section(String title, List<PlacePanel.Option> options) {
        public Section {
            options = List.copyOf(options);
        }
    }
}
