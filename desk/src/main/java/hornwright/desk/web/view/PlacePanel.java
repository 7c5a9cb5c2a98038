package hornwright.desk.web.view;

import java.util.List;

/**
 * Everything known of one place.
 *
 * @param found what is there now, in words; empty when nobody has looked
 * @param asBuilt what left the factory, in words, and how well that is known
 * @param lever the address of its key from the side; empty for what belongs to no key
 * @param instead where it is told what fits there and what else could lie there; empty where neither is known
 * @param kin what stands at the same cup, key or contact, so that what lies under or over it is one tap away
 * @param seq how far the job had come when this was made
 * @param kept where the removed original lies; empty when none is kept
 * @param photos the photographs that show it or point at it
 * @param thicknesses for a pad: what each stocked thickness leaves to float
 * @param padClass for a pad: how readily it gives, to be settled; empty for any other place
 */
public record PlacePanel(
        String horn,
        String id,
        String name,
        String meaning,
        State state,
        String found,
        String asBuilt,
        String asBuiltGround,
        String treatment,
        String why,
        String provisional,
        List<Figure> figures,
        List<Thickness> thicknesses,
        List<ClassForm> padClass,
        List<Counsel> counsel,
        String whoDecides,
        String kept,
        String note,
        List<PhotoPrint> photos,
        PhotoForm put,
        FindingForm form,
        String lever,
        String instead,
        List<Kin> kin,
        long seq,
        String fresh) {
    public PlacePanel {
        figures = List.copyOf(figures);
        thicknesses = List.copyOf(thicknesses);
        padClass = List.copyOf(padClass);
        counsel = List.copyOf(counsel);
        photos = List.copyOf(photos);
        kin = List.copyOf(kin);
    }

    /** A place beside this one. */
    public record Kin(String place, String name, String address) {}

    /** One stocked pad thickness tried in this cup. */
    public record Thickness(String size, String shelf, Figure left, String verdict, boolean works) {}

    /**
     * The class of one pad.
     *
     * @param why in words
     * @param own whether it was settled for this pad alone
     */
    public record ClassForm(String word, String why, boolean own, List<Option> options) {
        public ClassForm {
            options = List.copyOf(options);
        }
    }

    /** What to do, with what to mind. */
    public record Counsel(String words, List<String> cautions, List<String> recheck) {}

    /** What may be said of this place when it is looked at. */
    public record FindingForm(
            List<Option> materials,
            List<Option> conditions,
            List<Option> origins,
            String thickness,
            String material,
            String fault) {}

    public record Option(String word, String label, boolean chosen) {}
}
