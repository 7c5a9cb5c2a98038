package hornwright.bench.survey;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What is tried on a neck with hands, eyes and a little air; the first word is the one that is wanted, later ones are worse. */
public enum NeckCheck {
    SLIDES("slides", "without rock", "rocks", "sticks"),
    CLAMPS("clamp turn", "a quarter turn", "half a turn", "more than half a turn", "does not clamp"),
    SEALS("sealed with the screw off", "seals", "leaks"),
    PULL_DOWN("pull-down", "not at all", "a little", "clearly"),
    PIP("pip", "sound", "leaks at its foot"),
    BRACE("brace", "sound or none", "loose"),
    TURNED("neck turned 20° either way", "free", "rubs", "opens the vent");

    private final String point;
    private final List<String> words;

    NeckCheck(String point, String... words) {
        this.point = point;
        this.words = List.of(words);
    }

    /** The point of the reading. */
    public String point() {
        return point;
    }

    public List<String> words() {
        return words;
    }

    /** 0 for what is wanted, more the worse it is; less than 0 for a word that is none of the answers. */
    public int badness(String said) {
        return words.indexOf(said);
    }

    public static Optional<NeckCheck> at(String point) {
        return Stream.of(values()).filter(check -> check.point.equals(point)).findFirst();
    }
}
