package hornwright.desk.find;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** What an owner or a player complains of, and the page that finds out. The words are common practice. */
public enum Trouble {
    LINKS(
            "Keys that should close together do not",
            "links",
            "link links linked regulate regulation together stays stay opens apart leaf feeler",
            "one key closes but another the next cup cups pad does not when pressed under with contact contacts cork screw"
                    + " open still is are it d e f f# g g# a b bis bb c low high"),
    LEAKS(
            "It leaks, or low notes do not speak",
            "leaks",
            "leak leaks leaking gurgle gurgles burble burbles warble warbles weak stuffy speak speaks",
            "low notes note does not hard to blow air d c b bb"),
    FIT(
            "Keys rattle or wobble",
            "fit",
            "rattle rattles rattling wobble wobbles clatter clacks loose play worn",
            "keys key"),
    FEEL(
            "Keys are heavy, uneven, slow or bounce",
            "feel",
            "heavy stiff uneven bounce bounces bouncing slow sluggish spring springs sticky",
            "keys key touch action is too light g# table"),
    NECK("The neck turns, rocks or leaks", "neck", "neck tenon rocks", "loose turns turn leaks is"),
    OCTAVE(
            "Octaves crack or do not change",
            "octave",
            "octave octaves cracks crack squeak squeaks overblow",
            "key vent thumb does not change jumps g a high"),
    SOUND(
            "Notes are sharp, flat or out of tune",
            "sound",
            "tune tuning intonation cents",
            "notes note out of is sharp flat");

    private final String title;
    private final String page;
    private final Set<String> telling;
    private final String around;

    /**
     * @param telling words of which one is enough in a complaint
     * @param around words that stand beside them in a sentence
     */
    Trouble(String title, String page, String telling, String around) {
        this.title = title;
        this.page = page;
        this.telling = Set.copyOf(Fold.words(telling));
        this.around = around;
    }

    public String title() {
        return title;
    }

    /** The last word of the address of its page. */
    public String page() {
        return page;
    }

    /** Those an owner's words tell of, in this order. */
    public static List<Trouble> in(String complaint) {
        List<String> words = Fold.words(complaint);
        return Stream.of(values())
                .filter(trouble -> words.stream().anyMatch(trouble.telling::contains))
                .toList();
    }

    /** As something to be found for the horn in hand. */
    public Text text(String job) {
        return new Text(
                Text.Sort.PAGE,
                title,
                "",
                "/horn/%s/%s".formatted(job, page),
                String.join(" ", telling) + " " + around);
    }
}
