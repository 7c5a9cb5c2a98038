package hornwright.bench.steps;

import hornwright.bench.horn.Key;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Rod;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** In which order rods come off and go on again, for the whole horn or for one key that must come off once more. */
public record RodOrder(Keywork keywork) {
    public List<Rod> off() {
        return keywork.removalOrder();
    }

    /** The other way round: what came off last goes on first. */
    public List<Rod> on() {
        return off().reversed();
    }

    /** The fewest rods to draw before this key is in the hand, its own last; they go on again the other way round. */
    public List<Rod> toReach(Key key) {
        Set<String> needed = new LinkedHashSet<>();
        need(key.rod(), needed);
        return off().stream().filter(rod -> needed.contains(rod.id())).toList();
    }

    private void need(String rod, Set<String> needed) {
        if (needed.add(rod)) {
            keywork.rods().get(rod).removeAfter().forEach(before -> need(before, needed));
        }
    }
}
