package hornwright.desk.web.page;

import java.util.List;
import java.util.stream.Stream;

/**
 * The pages of a horn, each in its compartment; a page joins the tray by one line here. The first of a compartment is
 * the one it opens with.
 */
public enum Sheet {
    UNROLLED(Bay.HORN, "", "Unrolled"),
    AS_BUILT(Bay.HORN, "as-built", "As built"),
    PHOTOS(Bay.HORN, "photos", "Photographs"),
    HISTORY(Bay.HORN, "history", "History"),

    ARRIVAL(Bay.ARRIVAL, "arrival", "Arrival"),

    SURVEY(Bay.SURVEY, "survey", "By groups"),

    MEASURE(Bay.MEASURE, "measure", "Grid"),
    POINT(Bay.MEASURE, "point", "One point"),
    FIT(Bay.MEASURE, "fit", "Key fit"),
    HOLES(Bay.MEASURE, "holes", "Tone holes"),
    OCTAVE(Bay.MEASURE, "octave", "Octave and table"),
    NECK(Bay.MEASURE, "neck", "Neck"),
    LEAKS(Bay.MEASURE, "leaks", "Leaks"),
    BODY(Bay.SURVEY, "body", "Body"),
    FINISH(Bay.SURVEY, "finish", "Finish and stamps"),
    ADHESIVES(Bay.SURVEY, "adhesives", "Adhesives"),

    PLAN(Bay.PLAN, "plan", "Sizes"),
    LINKS(Bay.PLAN, "links", "Links"),
    CLOSING(Bay.PLAN, "closing", "Closing"),
    KEEP(Bay.PLAN, "keep", "Keep or replace"),
    FEEL(Bay.PLAN, "feel", "Feel"),

    WORK(Bay.WORK, "work", "Steps"),
    TRAYS(Bay.WORK, "trays", "Off and on"),
    KEPT(Bay.WORK, "kept", "Kept parts"),

    SOUND(Bay.SOUND, "sound", "Play and tuning"),
    SOUND_LEAK(Bay.SOUND, "sound/leak", "Where it leaks"),
    SOUND_BEFORE(Bay.SOUND, "sound/before", "Before and now"),

    HANDOVER(Bay.HANDOVER, "handover", "Hand-over");

    private final Bay bay;
    private final String page;
    private final String title;

    /** @param page the last words of its address under {@code /horn/{id}/}, which is what a page gives its frame */
    Sheet(Bay bay, String page, String title) {
        this.bay = bay;
        this.page = page;
        this.title = title;
    }

    public Bay bay() {
        return bay;
    }

    public String page() {
        return page;
    }

    String title() {
        return title;
    }

    public static List<Sheet> in(Bay bay) {
        return Stream.of(values()).filter(sheet -> sheet.bay == bay).toList();
    }

    static Sheet named(String page) {
        return Stream.of(values())
                .filter(sheet -> sheet.page.equals(page))
                .findFirst()
                .orElse(UNROLLED);
    }
}
