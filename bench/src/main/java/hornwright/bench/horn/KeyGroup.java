package hornwright.bench.horn;

/**
 * The keys a repairer handles together, in the words used at the bench.
 */
public enum KeyGroup implements Word {
    BELL("bell"),
    LOW("low-c-e-flat"),
    LOWER_STACK("lower-stack"),
    UPPER_STACK("upper-stack"),
    G_SHARP("g-sharp"),
    TABLE("table"),
    SIDE("side"),
    PALM("palm"),
    OCTAVE("octave"),
    OTHER("other");

    private final String word;

    KeyGroup(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }

    /** The name of the group in a heading. */
    public String title() {
        return switch (this) {
            case BELL -> "Bell keys";
            case LOW -> "Low C and E♭";
            case LOWER_STACK -> "Lower stack";
            case UPPER_STACK -> "Upper stack";
            case G_SHARP -> "G♯";
            case TABLE -> "Low table";
            case SIDE -> "Side keys";
            case PALM -> "Palm keys";
            case OCTAVE -> "Octave mechanism";
            case OTHER -> "Other keys";
        };
    }
}
