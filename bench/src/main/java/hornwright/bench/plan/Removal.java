package hornwright.bench.plan;

import java.util.List;

/**
 * One rod on its turn in strip-down.
 *
 * @param turn 1 comes off first
 * @param keys that come off with it, upper end first
 * @param after rods that must be off before
 */
public record Removal(int turn, String rod, List<String> keys, List<String> after, String words) {
    public Removal {
        keys = List.copyOf(keys);
        after = List.copyOf(after);
    }
}
