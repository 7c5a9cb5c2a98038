package hornwright.bench.survey;

import hornwright.bench.horn.Word;
import java.util.Optional;
import java.util.stream.Stream;

/** What is done about a rim that is not level. */
public enum RimChoice implements Word {
    LEAVE("leave"),
    LIFT("lift"),
    FILE("file");

    /** Point of a rim check that says which. */
    public static final String POINT = "choice";

    private final String word;

    RimChoice(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }

    public static Optional<RimChoice> of(String word) {
        return Stream.of(values()).filter(choice -> choice.word.equals(word)).findFirst();
    }
}
