package hornwright.engines.linkage;

import hornwright.engines.linkage.Mechanism.Link;
import java.util.ArrayList;
import java.util.List;

/**
 * In which order links are set: what a key drives comes before what drives that key, so no contact is disturbed by a
 * later one.
 *
 * @param links ids, each once; a link comes after every link whose driver is its follower; ties in the given order
 * @param circles ids of the links on a circle, for which no order is free of going back; they stand last in the order
 */
public record BenchOrder(List<String> links, List<String> circles) {
    public BenchOrder {
        links = List.copyOf(links);
        circles = List.copyOf(circles);
    }

    public static BenchOrder of(List<Link> links) {
        List<Link> circles =
                links.stream().filter(link -> onCircle(link, links)).toList();
        List<Link> waiting = new ArrayList<>(links);
        waiting.removeAll(circles);
        List<String> order = new ArrayList<>();
        while (!waiting.isEmpty()) {
            Link next = waiting.stream()
                    .filter(link ->
                            waiting.stream().noneMatch(other -> other.driver().equals(link.follower())))
                    .findFirst()
                    .orElseThrow();
            waiting.remove(next);
            order.add(next.id());
        }
        List<String> round = circles.stream().map(Link::id).toList();
        order.addAll(round);
        return new BenchOrder(order, round);
    }

    /** Whether a chain of links leads from the follower of this one back to its driver. */
    private static boolean onCircle(Link link, List<Link> links) {
        List<String> reached = new ArrayList<>(List.of(link.follower()));
        for (int i = 0; i < reached.size(); i++) {
            String key = reached.get(i);
            if (key.equals(link.driver())) {
                return true;
            }
            links.stream()
                    .filter(next -> next.driver().equals(key) && !reached.contains(next.follower()))
                    .forEach(next -> reached.add(next.follower()));
        }
        return false;
    }
}
