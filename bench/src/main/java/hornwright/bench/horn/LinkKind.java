package hornwright.bench.horn;

/**
 * What the first key does to the second when it moves.
 */
public enum LinkKind implements Word {
    CLOSES("closes"),
    HOLDS_SHUT("holds-shut"),
    RELEASES("releases"),
    OPENS("opens"),
    SWITCHES("switches");

    private final String word;

    LinkKind(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }

    /** 1 when the driver pushes its follower towards closed, -1 when it pushes it open. */
    public int sense() {
        return switch (this) {
            case CLOSES, HOLDS_SHUT, SWITCHES -> 1;
            case RELEASES, OPENS -> -1;
        };
    }

    /** The kind as a verb in a sentence: "D closes F sharp". */
    public String verb() {
        return word.replace('-', ' ');
    }
}
