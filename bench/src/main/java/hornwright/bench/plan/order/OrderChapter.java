package hornwright.bench.plan.order;

import hornwright.bench.horn.Key;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Place;
import hornwright.bench.horn.Rod;
import hornwright.bench.horn.RodKind;
import hornwright.bench.plan.PlannedStep;
import hornwright.bench.plan.Removal;
import hornwright.bench.steps.BenchSteps;
import hornwright.bench.steps.Disturbances;
import hornwright.bench.steps.Progress;
import hornwright.bench.steps.Step;
import hornwright.bench.steps.StepsAsked;
import hornwright.bench.steps.WorkEvent;
import hornwright.bench.steps.WorkGraph;
import hornwright.bench.survey.Stage;
import hornwright.bench.survey.WorkDone;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Steps in order with their state, and removal. */
public record OrderChapter(List<PlannedStep> steps, List<Removal> removal) {
    /** Everything the order depends on. */
    public record Question(StepsAsked asked, Stage stage, List<WorkDone> done) {
        public Question {
            done = List.copyOf(done);
        }

        Keywork keywork() {
            return asked.keywork();
        }
    }

    public OrderChapter {
        steps = List.copyOf(steps);
        removal = List.copyOf(removal);
    }

    public static OrderChapter of(Question ask) {
        WorkGraph graph = BenchSteps.of(ask.asked());
        Progress progress = Progress.after(graph, events(ask, graph));
        List<PlannedStep> steps = graph.steps().stream()
                .map(step -> new PlannedStep(step, progress.of(step.id())))
                .toList();
        return new OrderChapter(steps, removal(ask.keywork()));
    }

    /** Reaching a stage signs off all up to it; what was reported after that may disturb it again. */
    private static List<WorkEvent> events(Question ask, WorkGraph graph) {
        List<WorkEvent> events = new ArrayList<>();
        for (Step step : graph.steps()) {
            if (ask.stage() != Stage.ARRIVAL && step.stage().compareTo(ask.stage()) <= 0) {
                events.add(new WorkEvent.SignedOff(step.id(), true));
            }
        }
        Disturbances disturbances = new Disturbances(graph);
        ask.done()
                .forEach(work ->
                        disturbances.of(work, name(ask.keywork(), work.of())).ifPresent(events::add));
        return events;
    }

    /** The trade name of what was worked on; steps and unknown things keep their id. */
    private static String name(Keywork keywork, String of) {
        String bare = of.replaceFirst("^cup\\.", "");
        return keywork.keys()
                .find(bare)
                .map(key -> key.name().display())
                .or(() -> keywork.places().find(of).map(Place::display))
                .orElse(of);
    }

    private static List<Removal> removal(Keywork keywork) {
        List<Removal> turns = new ArrayList<>();
        for (Rod rod : keywork.removalOrder()) {
            List<Key> keys = keywork.keysOn(rod);
            String names = keys.stream().map(key -> key.name().display()).collect(Collectors.joining(", "));
            String words = (rod.kind() == RodKind.ROD ? "Draw the rod of " : "Undo the pivots of ") + names;
            turns.add(new Removal(
                    turns.size() + 1, rod.id(), keys.stream().map(Key::id).toList(), rod.removeAfter(), words));
        }
        return turns;
    }
}
