package hornwright.desk.drawing;

/** How a place stands on the layer that is shown; always told by icon or pattern as well as by colour. */
public enum Standing {
    AS_BUILT("as-built", "as built"),
    FOUND("found", "as found"),
    PLANNED("planned", "planned"),
    DONE("done", "done"),
    STALE("stale", "recheck"),
    MISSING("missing", "not measured"),
    CONTESTED("contested", "contested");

    private final String word;
    private final String spoken;

    Standing(String word, String spoken) {
        this.word = word;
        this.spoken = spoken;
    }

    /** The value of data-state. */
    public String word() {
        return word;
    }

    public String spoken() {
        return spoken;
    }

    /** Whether the state is marked by a token beside the place. */
    boolean hasToken() {
        return this != AS_BUILT && this != FOUND;
    }

    /** The token as lines in a box of 14 units about its middle. */
    String token() {
        return switch (this) {
            case AS_BUILT, FOUND -> "";
            case PLANNED -> "M4 0A4 4 0 1 1 -4 0A4 4 0 1 1 4 0";
            case DONE -> "M-4.5 0L-1.2 3.6L4.8 -4";
            case STALE -> "M4.6 -1.5A4.8 4.8 0 1 0 4.4 2.2M5.2 -5.2V-1.2H1.3";
            case MISSING -> "M-4.5 0H4.5";
            case CONTESTED -> "M-1.6 -5V5M1.6 -5V5";
        };
    }
}
