package hornwright.bench.job;

import org.jspecify.annotations.Nullable;

/**
 * A photograph of the list was taken, or the tick taken off again.
 *
 * @param file name of the picture in the store, if it lies there
 */
@Kind(word = "photo-ticked")
public record PhotoTicked(
        String shot, boolean taken, @Nullable String file) implements JobEdit {
    @Override
    public Fields fields() {
        return Fields.of("photo." + shot);
    }

    @Override
    public String inWords() {
        return "photograph %s %s".formatted(shot, taken ? "taken" : "not taken after all");
    }
}
