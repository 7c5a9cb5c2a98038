package hornwright.bench.body;

import java.util.List;
import java.util.Optional;

/** What the finish tells of earlier work; the answers that speak for a later finish come after the first. */
public enum FinishSign {
    EDGES("edges of keys and posts", List.of("crisp", "rounded by buffing")),
    ENGRAVING("lines of the engraving", List.of("sharp", "worn soft")),
    LACQUER_IN_ENGRAVING("lacquer in the engraving", List.of("cut through it", "lies in the lines")),
    UNDER_PARTS("under guards, feet and corks", List.of("as outside", "other colour or bare")),
    STAMPS("stamps and serial", List.of("crisp", "flattened")),
    SCREWS("heads of screws and rods", List.of("untouched", "turned or plated over")),
    SOLDER_LINES("solder lines", List.of("clean", "lacquered over old flux"));

    /** Subject of these readings. */
    public static final String SUBJECT = "finish";

    private final String point;
    private final List<String> words;

    FinishSign(String point, List<String> words) {
        this.point = point;
        this.words = words;
    }

    /** Where to look; the point of the reading. */
    public String point() {
        return point;
    }

    public List<String> words() {
        return words;
    }

    /** Whether an answer speaks for a later finish; empty when it is none of the answers. */
    Optional<Boolean> later(String said) {
        return words.contains(said) ? Optional.of(words.indexOf(said) > 0) : Optional.empty();
    }
}
