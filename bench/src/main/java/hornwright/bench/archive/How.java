package hornwright.bench.archive;

import org.jspecify.annotations.Nullable;

/**
 * How a sitting's looks came about; the same for all that was seen in it.
 *
 * @param origin what else comes from the same root shares this name and counts once
 * @param citation where the looks are written down; without one they have no strength
 * @param file hash of a photograph, if there is one
 */
public record How(
        Means means,
        Hand hand,
        Bearing bearing,
        Origin origin,
        Interest interest,
        @Nullable String citation,
        @Nullable String file) {}
