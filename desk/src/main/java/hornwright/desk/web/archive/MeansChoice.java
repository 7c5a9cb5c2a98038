package hornwright.desk.web.archive;

import hornwright.bench.archive.Means;
import hornwright.bench.archive.Method;
import java.util.List;
import java.util.stream.Stream;

/** What stands behind an item, as one choice of a form: the kind together with the mark that decides its weight. */
public enum MeansChoice {
    SEEN("seen in the hand, part unaltered", new Means.Examined(Method.SEEN, true)),
    MEASURED("measured in the hand, part unaltered", new Means.Examined(Method.MEASURED, true)),
    ANALYSED("analysed with an instrument, part unaltered", new Means.Examined(Method.ANALYSED, true)),
    MAY_BE_LATER("seen in the hand, part may be later", new Means.Examined(Method.SEEN, false)),
    CLEAR_PHOTO("clear photograph with scale", new Means.Pictured(true)),
    PHOTO("photograph", new Means.Pictured(false)),
    MAKERS_PAPER("paper of the time, by the maker", new Means.Written(true)),
    PAPER("paper of the time, by others", new Means.Written(false)),
    TOLD("testimony, recorded and named", new Means.Told(true)),
    TOLD_LOOSELY("testimony", new Means.Told(false)),
    BOOK("later literature, with its sources", new Means.Published(true)),
    LOOSE_BOOK("later literature, without sources", new Means.Published(false)),
    HEARSAY("hearsay, advertisement, forum", new Means.Rumoured());

    private final String label;
    private final Means means;

    MeansChoice(String label, Means means) {
        this.label = label;
        this.means = means;
    }

    public String label() {
        return label;
    }

    public Means means() {
        return means;
    }

    private boolean isOfOneHorn() {
        return means instanceof Means.Examined || means instanceof Means.Pictured;
    }

    /** What one can see of a single horn. */
    public static List<MeansChoice> ofHorns() {
        return Stream.of(values()).filter(MeansChoice::isOfOneHorn).toList();
    }

    /** What speaks of many horns at once. */
    public static List<MeansChoice> ofMany() {
        return Stream.of(values()).filter(one -> !one.isOfOneHorn()).toList();
    }
}
