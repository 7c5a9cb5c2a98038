package hornwright.desk.web.archive;

import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.PlacePanel;
import java.util.List;

/**
 * What the archive rests on. Question: whom have we asked, and what do they disagree on?
 *
 * @param axis the serials with every horn as a mark
 * @param statement what is typed of a paper, a person or a book
 */
public record ArchivePage(
        Frame frame,
        String lead,
        List<Horn> horns,
        List<Contest> contests,
        List<Aside> asides,
        List<Said> said,
        List<Searched> searches,
        List<Told> told,
        Years years,
        WitnessPage.Facts fresh,
        Form form,
        List<String> faults,
        String kept,
        long seq,
        String key) {
    public ArchivePage {
        horns = List.copyOf(horns);
        contests = List.copyOf(contests);
        asides = List.copyOf(asides);
        said = List.copyOf(said);
        searches = List.copyOf(searches);
        told = List.copyOf(told);
        faults = List.copyOf(faults);
    }

    public record Horn(
            String serial,
            String voice,
            String address,
            String built,
            String integrity,
            String looked,
            String stamps) {}

    /**
     * A look that speaks against the rest and is not settled.
     *
     * @param evidence the ids it is made of, with commas
     */
    public record Contest(String horn, String words, String where, String evidence, String witness) {}

    public record Aside(String words, String reason) {}

    /** A paper, a person or a book: what it says of which serials. */
    public record Said(String kind, String words, String serials, String origin, String cited, boolean copy) {}

    /**
     * What another shop did with the same archive.
     *
     * @param evidence an item it set aside and this shop did not; empty for anything else
     */
    public record Told(String who, String words, String evidence, String reason) {}

    public record Searched(String where, String terms, String when, String places) {}

    /** What the two forms offer. */
    public record Form(
            List<PlacePanel.Option> means,
            List<PlacePanel.Option> hands,
            List<PlacePanel.Option> bearings,
            List<PlacePanel.Option> interests,
            List<PlacePanel.Option> stances,
            List<PlacePanel.Option> voices,
            List<PlacePanel.Option> strokes) {}
}
