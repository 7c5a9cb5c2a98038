package hornwright.bench.steps;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornwright.bench.survey.Stage;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The bookkeeping of signatures against a bench that remembers what it really did. */
class ProgressTest {
    private static final List<Stage> STAGES = List.of(Stage.STRIPPED, Stage.KEYS_FITTED, Stage.PADDED);

    @Test
    void steps_that_wait_for_each_other_are_refused() {
        List<Step> circle = List.of(step("a", List.of("b"), List.of()), step("b", List.of(), List.of("a")));
        assertThatThrownBy(() -> WorkGraph.of(circle)).hasMessage("these steps wait for each other: a, b");
    }

    @Test
    void a_step_that_needs_nothing_known_is_refused() {
        assertThatThrownBy(() -> WorkGraph.of(List.of(step("a", List.of("b"), List.of()))))
                .hasMessage("step a needs b, which is no step");
    }

    @Test
    void in_any_graph_every_step_stands_once_and_after_what_it_needs() {
        Random random = new Random(7);
        for (int round = 0; round < 300; round++) {
            WorkGraph graph = randomGraph(random, 1 + random.nextInt(40));
            Set<String> before = new HashSet<>();
            for (Step step : graph.steps()) {
                assertThat(before).containsAll(step.needs());
                assertThat(before.add(step.id())).isTrue();
            }
        }
    }

    @Test
    void working_in_order_never_asks_for_anything_again() {
        Random random = new Random(8);
        for (int round = 0; round < 200; round++) {
            WorkGraph graph = randomGraph(random, 1 + random.nextInt(40));
            List<WorkEvent> events = new ArrayList<>();
            for (Step step : graph.steps()) {
                assertThat(Progress.after(graph, events).next()).contains(step);
                events.add(new WorkEvent.SignedOff(step.id(), true));
            }
            assertThat(Progress.after(graph, events).all().values()).allMatch(state -> state instanceof StepState.Good);
        }
    }

    @Test
    void nothing_signed_off_is_ever_silently_valid_and_nothing_valid_is_ever_asked_again() {
        Random random = new Random(9);
        for (int round = 0; round < 300; round++) {
            WorkGraph graph = randomGraph(random, 1 + random.nextInt(30));
            RealBench bench = new RealBench(graph);
            for (int act = 0; act < 120; act++) {
                bench.act(random);
                Progress progress = Progress.after(graph, bench.events);
                for (Step step : graph.steps()) {
                    boolean good = progress.of(step.id()) instanceof StepState.Good;
                    assertThat(good).as(step.id()).isEqualTo(bench.isTrulyGood(step));
                }
            }
        }
    }

    @Test
    void what_is_left_done_in_its_order_needs_no_step_twice_and_leaves_nothing() {
        Random random = new Random(10);
        for (int round = 0; round < 300; round++) {
            WorkGraph graph = randomGraph(random, 1 + random.nextInt(30));
            RealBench bench = new RealBench(graph);
            for (int act = 0; act < random.nextInt(80); act++) {
                bench.act(random);
            }
            List<WorkEvent> events = new ArrayList<>(bench.events);
            for (Step step : Progress.after(graph, events).left()) {
                Progress now = Progress.after(graph, events);
                if (now.of(step.id()) instanceof StepState.Good) {
                    continue;
                }
                assertThat(now.next()).contains(step);
                events.add(new WorkEvent.SignedOff(step.id(), random.nextBoolean()));
            }
            assertThat(Progress.after(graph, events).left()).isEmpty();
        }
    }

    @Test
    void no_shorter_way_than_what_is_left_in_its_order_makes_all_good() {
        Random random = new Random(12);
        int left = 0;
        for (int round = 0; round < 120; round++) {
            WorkGraph graph = randomGraph(random, 2 + random.nextInt(3));
            RealBench bench = new RealBench(graph);
            for (int act = 0; act < random.nextInt(14); act++) {
                bench.act(random);
            }
            boolean changed = random.nextBoolean();
            int took = inOrder(graph, bench.events, changed);
            assertThat(reaches(graph, bench.events, changed, took)).isTrue();
            assertThat(took == 0 || !reaches(graph, bench.events, changed, took - 1))
                    .as("round %d: %d steps", round, took)
                    .isTrue();
            left += took;
        }
        assertThat(left).isGreaterThan(120);
    }

    /** How many steps the order of what is left takes, passing over what turns out good on the way. */
    private static int inOrder(WorkGraph graph, List<WorkEvent> given, boolean changed) {
        List<WorkEvent> events = new ArrayList<>(given);
        int took = 0;
        for (Step step : Progress.after(graph, events).left()) {
            if (!(Progress.after(graph, events).of(step.id()) instanceof StepState.Good)) {
                events.add(new WorkEvent.SignedOff(step.id(), changed));
                took++;
            }
        }
        return took;
    }

    /** Tries every sequence of so many steps, in any order and with repeats. */
    private static boolean reaches(WorkGraph graph, List<WorkEvent> events, boolean changed, int most) {
        if (Progress.after(graph, events).left().isEmpty()) {
            return true;
        }
        if (most == 0) {
            return false;
        }
        for (Step step : graph.steps()) {
            List<WorkEvent> more = new ArrayList<>(events);
            more.add(new WorkEvent.SignedOff(step.id(), changed));
            if (reaches(graph, more, changed, most - 1)) {
                return true;
            }
        }
        return false;
    }

    @Test
    void a_recheck_always_says_why() {
        WorkGraph graph = WorkGraph.of(List.of(
                step("arm", List.of(), List.of()),
                step("pad", List.of("arm"), List.of()),
                step("link", List.of("pad"), List.of())));
        List<WorkEvent> events = List.of(
                new WorkEvent.SignedOff("arm", true),
                new WorkEvent.SignedOff("pad", true),
                new WorkEvent.SignedOff("link", true),
                new WorkEvent.Disturbed("arm", "arm bent"));
        Progress progress = Progress.after(graph, events);
        assertThat(progress.of("link")).isEqualTo(new StepState.Recheck("arm bent", List.of("pad")));
        assertThat(progress.next()).extracting(Step::id).containsExactly("arm");
    }

    /** Keeps the true content of every result; a signature copies the contents it was given on. */
    private static final class RealBench {
        private final WorkGraph graph;
        private final Map<String, Integer> content = new HashMap<>();
        private final Map<String, Map<String, Integer>> signedOn = new HashMap<>();
        private final List<WorkEvent> events = new ArrayList<>();
        private int next = 1;

        RealBench(WorkGraph graph) {
            this.graph = graph;
        }

        void act(Random random) {
            Step step = graph.steps().get(random.nextInt(graph.steps().size()));
            boolean first = !signedOn.containsKey(step.id());
            if (!first && random.nextInt(4) == 0) {
                content.put(step.id(), next++);
                events.add(new WorkEvent.Disturbed(step.id(), "bent"));
                return;
            }
            boolean changed = first || random.nextBoolean();
            if (changed) {
                content.put(step.id(), next++);
            }
            Map<String, Integer> on = new HashMap<>();
            on.put(step.id(), content.getOrDefault(step.id(), 0));
            step.restsOn().forEach(below -> on.put(below, content.getOrDefault(below, 0)));
            signedOn.put(step.id(), on);
            events.add(new WorkEvent.SignedOff(step.id(), changed));
        }

        boolean isTrulyGood(Step step) {
            Map<String, Integer> on = signedOn.get(step.id());
            return on != null
                    && on.entrySet().stream()
                            .allMatch(was -> was.getValue().equals(content.getOrDefault(was.getKey(), 0)))
                    && step.restsOn().stream().allMatch(below -> isTrulyGood(graph.get(below)));
        }
    }

    private static WorkGraph randomGraph(Random random, int size) {
        List<Step> steps = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            List<String> rests = new ArrayList<>();
            List<String> after = new ArrayList<>();
            for (int below = Math.max(0, i - 6); below < i; below++) {
                if (random.nextInt(4) == 0) {
                    (random.nextBoolean() ? rests : after).add("s" + below);
                }
            }
            steps.add(new Step("s" + i, STAGES.get(random.nextInt(STAGES.size())), "do " + i, "", rests, after));
        }
        return WorkGraph.of(steps);
    }

    private static Step step(String id, List<String> restsOn, List<String> after) {
        return new Step(id, Stage.PADDED, "do " + id, id, restsOn, after);
    }
}
