package hornwright.bench.plan.order;

import hornwright.bench.horn.Key;
import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Rod;
import hornwright.bench.horn.RodKind;
import hornwright.bench.plan.PlannedStep;
import hornwright.bench.plan.Removal;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.steps.BenchSteps;
import hornwright.bench.steps.Progress;
import hornwright.bench.steps.StepsAsked;
import hornwright.bench.steps.WorkGraph;
import hornwright.bench.survey.Chronicle;
import hornwright.bench.survey.Stage;
import hornwright.bench.survey.WorkDone;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Steps in order with their state, and removal. */
public record OrderChapter(List<PlannedStep> steps, List<Removal> removal) {
    /** Everything the order depends on. */
    public record Question(StepsAsked asked, Stage stage, List<WorkDone> done, Chronicle chronicle, ShopRules rules) {
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
        Progress progress = Progress.after(graph, OrderEvents.of(ask, graph));
        List<PlannedStep> steps = graph.steps().stream()
                .map(step -> new PlannedStep(step, progress.of(step.id())))
                .toList();
        return new OrderChapter(steps, removal(ask.keywork()));
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
