package hornwright.desk.web.horn;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** The layers of the drawing, in the order of the work. */
public enum Layer {
    FOUND("found", "As found"),
    AS_BUILT("as-built", "As built"),
    ORIGIN("origin", "Original"),
    PLANNED("planned", "Planned"),
    DONE("done", "Done, stale"),
    SIZE("size", "Size"),
    HEIGHT("height", "Height"),
    LEAK("leak", "Leak"),
    FORCE("force", "Force");

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

    /** Which looks of the drawing it takes: those of materials, of states, or of numbers. */
    public String drawnAs() {
        return switch (this) {
            case FOUND, AS_BUILT -> word;
            case ORIGIN, PLANNED, DONE, LEAK -> "state";
            case SIZE, HEIGHT, FORCE -> "number";
        };
    }

    public boolean ofNumbers() {
        return drawnAs().equals("number");
    }

    public static Layer named(@Nullable String word) {
        return Arrays.stream(values())
                .filter(layer -> layer.word.equals(word))
                .findFirst()
                .orElse(FOUND);
    }
}
