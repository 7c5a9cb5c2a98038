package hornwright.desk.web.view;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** The layers of the drawing, in the order of the work. */
public enum Layer {
    FOUND("found", "As found"),
    AS_BUILT("as-built", "As built"),
    PLANNED("planned", "Planned"),
    DONE("done", "Done");

    private final String word;
    private final String label;

    Layer(String word, String label) {
        this.word = word;
        this.label = label;
    }

    public String word() {
        return word;
    }

    public String label() {
        return label;
    }

    /** Which looks of the drawing it takes: those of materials or those of states. */
    public String drawnAs() {
        return this == PLANNED || this == DONE ? "state" : word;
    }

    public static Layer named(@Nullable String word) {
        return Arrays.stream(values())
                .filter(layer -> layer.word.equals(word))
                .findFirst()
                .orElse(FOUND);
    }
}
