package hornwright.bench.job;

import org.jspecify.annotations.Nullable;

/**
 * A photograph of the list that was taken.
 *
 * @param shot which one of the list
 * @param file its name in the store; null when it lies elsewhere
 */
public record PhotoTick(String shot, @Nullable String file) {}
