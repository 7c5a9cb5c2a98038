package hornwright.desk.find;

import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;

/** Looks through many shelves at once: one for each horn, one for the archive, one for the goods. */
public final class Shelves {
    private static final Comparator<Hit> BEST = Comparator.comparingInt(Hit::score)
            .reversed()
            .thenComparingInt(hit -> hit.text().title().length())
            .thenComparing(hit -> hit.text().title())
            .thenComparing(hit -> hit.text().address());

    private Shelves() {}

    /** How many there are of a sort, and the best of them. */
    public record Found(int count, List<Hit> best) {
        public Found {
            best = List.copyOf(best);
        }
    }

    /** @param most so many of each sort are given back, the best first */
    public static Map<Text.Sort, Found> find(Collection<Shelf> shelves, String asked, int most) {
        List<String> wanted = Fold.words(asked);
        Map<Text.Sort, PriorityQueue<Hit>> best = new EnumMap<>(Text.Sort.class);
        Map<Text.Sort, Integer> counts = new EnumMap<>(Text.Sort.class);
        if (!wanted.isEmpty()) {
            for (Shelf shelf : shelves) {
                for (Hit hit : shelf.find(wanted)) {
                    Text.Sort sort = hit.text().sort();
                    counts.merge(sort, 1, Integer::sum);
                    PriorityQueue<Hit> queue = best.computeIfAbsent(sort, none -> new PriorityQueue<>(BEST.reversed()));
                    queue.add(hit);
                    if (queue.size() > most) {
                        queue.poll();
                    }
                }
            }
        }
        Map<Text.Sort, Found> found = new EnumMap<>(Text.Sort.class);
        best.forEach((sort, queue) -> found.put(
                sort,
                new Found(
                        counts.getOrDefault(sort, 0),
                        queue.stream().sorted(BEST).toList())));
        return found;
    }
}
