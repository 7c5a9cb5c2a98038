package hornwright.bench.steps;

import hornwright.bench.horn.ById;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.Set;

/**
 * Steps in an order in which each is done once and none undoes another: everything a step needs stands before it, and
 * among what is free to go next the earlier stage wins, then the order in which the steps were given.
 */
public final class WorkGraph {
    private final ById<Step> steps;
    private final Map<String, List<String>> restingOn;

    private WorkGraph(ById<Step> steps) {
        this.steps = steps;
        this.restingOn = new HashMap<>();
        for (Step step : steps) {
            step.restsOn()
                    .forEach(below -> restingOn
                            .computeIfAbsent(below, none -> new ArrayList<>())
                            .add(step.id()));
        }
    }

    /**
     * @throws IllegalArgumentException when a step needs one that is not there, or steps wait for each other in a
     *     circle
     */
    public static WorkGraph of(List<Step> given) {
        ById<Step> known = ById.of(given);
        for (Step step : given) {
            for (String need : step.needs()) {
                if (!known.contains(need)) {
                    throw new IllegalArgumentException("step %s needs %s, which is no step".formatted(step.id(), need));
                }
            }
        }
        return new WorkGraph(ById.of(inOrder(given, known)));
    }

    /** All steps, each after everything it needs. */
    public List<Step> steps() {
        return steps.list();
    }

    public Step get(String id) {
        return steps.get(id);
    }

    public boolean contains(String id) {
        return steps.contains(id);
    }

    /** Steps that rest on this one directly, in order. */
    public List<String> restingOn(String id) {
        return restingOn.getOrDefault(id, List.of());
    }

    /** Steps that rest on this one directly or through others, in order; without itself. */
    public Set<String> allRestingOn(String id) {
        Set<String> reached = new LinkedHashSet<>(Set.of(id));
        for (Step step : steps) {
            if (step.restsOn().stream().anyMatch(reached::contains)) {
                reached.add(step.id());
            }
        }
        reached.remove(id);
        return reached;
    }

    private static List<Step> inOrder(List<Step> given, ById<Step> known) {
        Map<String, Integer> waiting = new HashMap<>();
        Map<String, Integer> place = new HashMap<>();
        Map<String, List<Step>> freed = new HashMap<>();
        for (Step step : given) {
            place.put(step.id(), place.size());
            waiting.put(step.id(), step.needs().size());
            step.needs()
                    .forEach(need -> freed.computeIfAbsent(need, none -> new ArrayList<>())
                            .add(step));
        }
        PriorityQueue<Step> free = new PriorityQueue<>(
                Comparator.comparing(Step::stage).thenComparing(step -> place.getOrDefault(step.id(), 0)));
        known.stream().filter(step -> step.needs().isEmpty()).forEach(free::add);
        List<Step> ordered = new ArrayList<>();
        for (Step next = free.poll(); next != null; next = free.poll()) {
            ordered.add(next);
            for (Step follower : freed.getOrDefault(next.id(), List.of())) {
                if (waiting.merge(follower.id(), -1, Integer::sum) == 0) {
                    free.add(follower);
                }
            }
        }
        requireAll(given, ordered);
        return ordered;
    }

    private static void requireAll(List<Step> given, List<Step> ordered) {
        if (ordered.size() < given.size()) {
            Set<Step> stuck = new LinkedHashSet<>(given);
            ordered.forEach(stuck::remove);
            throw new IllegalArgumentException("these steps wait for each other: "
                    + String.join(", ", stuck.stream().map(Step::id).toList()));
        }
    }
}
