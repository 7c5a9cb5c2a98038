package hornwright.bench.horn;

import java.util.List;

/**
 * A hinge rod or pair of pivots. Order is its place in one valid order of removal; removeAfter names the rods that
 * must be off before it.
 */
public record Rod(
        String id,
        int order,
        RodKind kind,
        double diameterMm,
        Direction direction,
        double fromMm,
        double toMm,
        double angleDeg,
        double heightAboveBodyMm,
        List<Post> posts,
        List<String> removeAfter)
        implements Identified {
    public Rod {
        posts = List.copyOf(posts);
        removeAfter = List.copyOf(removeAfter);
    }
}
