package hornwright.bench.steps;

import hornwright.bench.horn.Key;
import hornwright.bench.horn.KeyGroup;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Rod;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * A tray on the bench: the bags of one group of keys, each with the rod and what turns on it.
 *
 * @param bags in the order they come off
 */
public record Tray(KeyGroup group, List<Bag> bags) {
    /**
     * One bag.
     *
     * @param turn its place in the order of removal, 1 first
     * @param keys from the upper end of the rod to the lower
     */
    public record Bag(int turn, Rod rod, List<Key> keys) {
        public Bag {
            keys = List.copyOf(keys);
        }
    }

    public Tray {
        bags = List.copyOf(bags);
    }

    /** The trays in the order in which the first bag of each comes off; a rod goes with its uppermost key. */
    public static List<Tray> of(Keywork keywork) {
        Map<KeyGroup, List<Bag>> byGroup = new EnumMap<>(KeyGroup.class);
        List<KeyGroup> seen = new ArrayList<>();
        int turn = 0;
        for (Rod rod : keywork.removalOrder()) {
            turn++;
            List<Key> keys = keywork.keysOn(rod);
            KeyGroup group = keys.isEmpty() ? KeyGroup.OTHER : keys.getFirst().group();
            if (!seen.contains(group)) {
                seen.add(group);
            }
            byGroup.computeIfAbsent(group, none -> new ArrayList<>()).add(new Bag(turn, rod, keys));
        }
        return seen.stream()
                .map(group -> new Tray(group, byGroup.getOrDefault(group, List.of())))
                .toList();
    }
}
