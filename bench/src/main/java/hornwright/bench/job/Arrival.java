package hornwright.bench.job;

import org.jspecify.annotations.Nullable;

/**
 * What came through the door with the horn.
 *
 * @param owner a person's id; null when it is the shop's own
 * @param complaint what is wrong with it in the owner's words, or empty
 */
public record Arrival(@Nullable String owner, String complaint) {}
