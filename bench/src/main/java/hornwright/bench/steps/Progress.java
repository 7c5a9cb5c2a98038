package hornwright.bench.steps;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * How far the work is. Every result has an edition, which grows when it changes; a signature remembers the editions it
 * was given on. A signature holds while all of them are still current and everything beneath is itself good, so nothing
 * signed off is silently valid, and what was looked at again and found unchanged asks nobody above it anything.
 */
public final class Progress {
    private final WorkGraph graph;
    private final Map<String, Integer> editions;
    private final Map<String, String> lastChange;
    private final Map<String, Signature> signatures;
    private final Map<String, StepState> states;

    /** The editions a step was signed on: its own and those of all it rests on. */
    private record Signature(Map<String, Integer> on) {}

    private Progress(
            WorkGraph graph,
            Map<String, Integer> editions,
            Map<String, String> lastChange,
            Map<String, Signature> signatures) {
        this.graph = graph;
        this.editions = editions;
        this.lastChange = lastChange;
        this.signatures = signatures;
        this.states = new LinkedHashMap<>();
        graph.steps().forEach(step -> states.put(step.id(), judge(step)));
    }

    /** After these events, in their order; events of steps the graph does not have are passed over. */
    public static Progress after(WorkGraph graph, List<WorkEvent> events) {
        Map<String, Integer> editions = new HashMap<>();
        Map<String, String> lastChange = new HashMap<>();
        Map<String, Signature> signatures = new HashMap<>();
        for (WorkEvent event : events) {
            if (!graph.contains(event.step())) {
                continue;
            }
            switch (event) {
                case WorkEvent.Disturbed disturbed -> {
                    editions.merge(disturbed.step(), 1, Integer::sum);
                    lastChange.put(disturbed.step(), disturbed.why());
                }
                case WorkEvent.SignedOff signed -> {
                    Step step = graph.get(signed.step());
                    if (signed.changed() || !signatures.containsKey(step.id())) {
                        editions.merge(step.id(), 1, Integer::sum);
                        lastChange.put(step.id(), "done again: " + step.words());
                    }
                    signatures.put(step.id(), sign(step, editions));
                }
            }
        }
        return new Progress(graph, editions, lastChange, signatures);
    }

    public StepState of(String step) {
        StepState state = states.get(step);
        if (state == null) {
            throw new IllegalArgumentException("there is no step " + step);
        }
        return state;
    }

    /** Every step with its state, in order. */
    public Map<String, StepState> all() {
        return java.util.Collections.unmodifiableMap(states);
    }

    /** What can be done now, in order: steps that are ready and rechecks whose turn it is. */
    public List<Step> next() {
        return graph.steps().stream()
                .filter(step -> switch (of(step.id())) {
                    case StepState.Ready ready -> true;
                    case StepState.Recheck recheck -> recheck.waitsFor().isEmpty();
                    case StepState.Waiting waiting -> false;
                    case StepState.Good good -> false;
                })
                .toList();
    }

    /**
     * All that is left, each step once and after everything it rests on: done in this order, nothing has to be done
     * again. A step that turns out good on the way, because what is beneath it was found right, is passed over.
     */
    public List<Step> left() {
        return graph.steps().stream().filter(step -> !isGood(step.id())).toList();
    }

    private static Signature sign(Step step, Map<String, Integer> editions) {
        Map<String, Integer> on = new HashMap<>();
        on.put(step.id(), editions.getOrDefault(step.id(), 0));
        step.restsOn().forEach(below -> on.put(below, editions.getOrDefault(below, 0)));
        return new Signature(on);
    }

    /** Steps are judged in order, so everything beneath this one has its state already. */
    private StepState judge(Step step) {
        Signature signature = signatures.get(step.id());
        if (signature == null) {
            List<String> missing =
                    step.needs().stream().filter(need -> !isGood(need)).toList();
            return missing.isEmpty() ? new StepState.Ready() : new StepState.Waiting(missing);
        }
        List<String> shaky =
                step.restsOn().stream().filter(below -> !isGood(below)).toList();
        String changed = changedSince(step, signature);
        if (changed != null) {
            return new StepState.Recheck(lastChange.getOrDefault(changed, notDone(changed)), shaky);
        }
        return shaky.isEmpty() ? new StepState.Good() : new StepState.Recheck(whyOf(shaky.getFirst()), shaky);
    }

    private @Nullable String changedSince(Step step, Signature signature) {
        if (!editionOf(step.id()).equals(signature.on().get(step.id()))) {
            return step.id();
        }
        return step.restsOn().stream()
                .filter(below -> !editionOf(below).equals(signature.on().get(below)))
                .findFirst()
                .orElse(null);
    }

    private Integer editionOf(String step) {
        return editions.getOrDefault(step, 0);
    }

    private boolean isGood(String step) {
        return states.get(step) instanceof StepState.Good;
    }

    private String whyOf(String step) {
        return switch (of(step)) {
            case StepState.Recheck recheck -> recheck.why();
            case StepState.Waiting waiting -> notDone(step);
            case StepState.Ready ready -> notDone(step);
            case StepState.Good good -> "";
        };
    }

    private String notDone(String step) {
        return "not done: " + graph.get(step).words();
    }
}
