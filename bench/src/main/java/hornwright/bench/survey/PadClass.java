package hornwright.bench.survey;

import hornwright.bench.horn.Word;
import java.util.Optional;

/** How readily a pad gives, softest first. What each gives is a row of the table of materials. */
public enum PadClass implements Word {
    SOFT("soft"),
    MEDIUM("medium"),
    FIRM("firm");

    /** The class of a pad nobody chose another for. */
    public static final PadClass USUAL = MEDIUM;

    private final String word;

    PadClass(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }

    /** The shop rule with the stiffness of its skin. */
    public String rule() {
        return "pad-class." + word + ".seat_MPa";
    }

    /** The same of its felt. */
    public String feltRule() {
        return "pad-class." + word + ".felt_MPa";
    }

    /** How far the skin gives before the felt takes over. */
    public String feltFromRule() {
        return "pad-class." + word + ".felt-from_mm";
    }

    /** The next softer class. */
    public Optional<PadClass> softer() {
        return switch (this) {
            case SOFT -> Optional.empty();
            case MEDIUM -> Optional.of(SOFT);
            case FIRM -> Optional.of(MEDIUM);
        };
    }
}
