package hornwright.benchmarks;

import hornwright.bench.steps.Progress;
import hornwright.bench.steps.Step;
import hornwright.bench.steps.StepState;
import hornwright.bench.steps.WorkEvent;
import hornwright.bench.steps.WorkGraph;
import hornwright.bench.survey.Stage;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Where 600 steps stand after all were signed off and fifty disturbed. Aim: 5 ms. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class StepsBenchmark {
    private static final int STEPS = 600;

    private final WorkGraph graph = graph();
    private final List<WorkEvent> events = events();

    @Setup
    public void bothAgree() {
        Progress progress = in_order();
        Set<String> good = one_by_one();
        for (Step step : graph.steps()) {
            if (progress.of(step.id()) instanceof StepState.Good != good.contains(step.id())) {
                throw new IllegalStateException("the two ways differ at " + step.id());
            }
        }
    }

    @Benchmark
    public Progress in_order() {
        return Progress.after(graph, events);
    }

    /** Baseline: every step asks everything beneath it anew. */
    @Benchmark
    public Set<String> one_by_one() {
        Map<String, Integer> editions = new HashMap<>();
        Map<String, Map<String, Integer>> signed = new HashMap<>();
        for (WorkEvent event : events) {
            if (event instanceof WorkEvent.SignedOff) {
                editions.merge(event.step(), 1, Integer::sum);
                Map<String, Integer> on = new HashMap<>();
                on.put(event.step(), editions.getOrDefault(event.step(), 0));
                graph.get(event.step()).restsOn().forEach(below -> on.put(below, editions.getOrDefault(below, 0)));
                signed.put(event.step(), on);
            } else {
                editions.merge(event.step(), 1, Integer::sum);
            }
        }
        Set<String> good = new HashSet<>();
        for (Step step : graph.steps()) {
            if (beneath(step, new HashSet<>()).stream().allMatch(id -> holds(id, editions, signed))) {
                good.add(step.id());
            }
        }
        return good;
    }

    private Set<String> beneath(Step step, Set<String> reached) {
        if (reached.add(step.id())) {
            step.restsOn().forEach(below -> beneath(graph.get(below), reached));
        }
        return reached;
    }

    private static boolean holds(String id, Map<String, Integer> editions, Map<String, Map<String, Integer>> signed) {
        Map<String, Integer> on = signed.get(id);
        return on != null
                && on.entrySet().stream()
                        .allMatch(was -> was.getValue().equals(editions.getOrDefault(was.getKey(), 0)));
    }

    /** As deep and as wide as that of a horn: each step rests on up to four of the forty before it. */
    private static WorkGraph graph() {
        Random random = new Random(600);
        List<Step> steps = new ArrayList<>();
        for (int i = 0; i < STEPS; i++) {
            Set<String> rests = new HashSet<>();
            for (int k = 0; k < 4 && i > 0; k++) {
                rests.add("s" + (i - 1 - random.nextInt(Math.min(i, 40))));
            }
            steps.add(new Step(
                    "s" + i,
                    i < STEPS / 2 ? Stage.KEYS_FITTED : Stage.PADDED,
                    "do " + i,
                    "",
                    List.copyOf(rests),
                    List.of()));
        }
        return WorkGraph.of(steps);
    }

    private List<WorkEvent> events() {
        Random random = new Random(50);
        List<WorkEvent> all = new ArrayList<>();
        graph.steps().forEach(step -> all.add(new WorkEvent.SignedOff(step.id(), true)));
        for (int i = 0; i < 50; i++) {
            all.add(new WorkEvent.Disturbed("s" + (STEPS / 2 + random.nextInt(STEPS / 2)), "bent"));
        }
        return all;
    }
}
