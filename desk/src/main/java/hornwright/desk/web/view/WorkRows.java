package hornwright.desk.web.view;

import hornwright.bench.plan.PlannedStep;
import hornwright.bench.steps.StepState;
import hornwright.bench.survey.AgreedUse;
import hornwright.bench.survey.Stage;
import hornwright.desk.web.view.WorkPage.Act;
import hornwright.desk.web.view.WorkPage.StageRow;
import hornwright.desk.web.view.WorkPage.StepRow;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** The steps of a horn with what can be said of each. */
public final class WorkRows {
    private static final int SHOWN = 5;
    private static final Act DONE = new Act("done", "Done", true);
    private static final Act RIGHT = new Act("right", "Found right", true);
    private static final Act AGAIN = new Act("done", "Done again", false);
    private static final Act CHANGED = new Act("changed", "Changed since", false);

    private final OnBench bench;
    private final Supplier<String> keys;

    /** @param keys makes a fresh key for each form */
    public WorkRows(OnBench bench, Supplier<String> keys) {
        this.bench = bench;
        this.keys = keys;
    }

    public WorkPage page(Frame frame, String said) {
        List<PlannedStep> order = bench.plan().order();
        return new WorkPage(
                frame,
                Next.of(bench),
                bench.id(),
                bench.history().seq(),
                said,
                uses(),
                reached(),
                keys.get(),
                order.stream()
                        .filter(step -> step.state() instanceof StepState.Ready)
                        .limit(SHOWN)
                        .map(this::row)
                        .toList(),
                order.stream()
                        .filter(step -> step.state() instanceof StepState.Recheck)
                        .map(this::row)
                        .toList(),
                Stream.of(Stage.values())
                        .map(this::stage)
                        .filter(stage -> !stage.steps().isEmpty())
                        .toList());
    }

    private List<PlacePanel.Option> uses() {
        return Stream.of(AgreedUse.values())
                .map(use -> new PlacePanel.Option(
                        use.name(),
                        use.word(),
                        bench.job().agreedUse().filter(agreed -> agreed == use).isPresent()))
                .toList();
    }

    private List<PlacePanel.Option> reached() {
        return Stream.of(Stage.values())
                .map(stage -> new PlacePanel.Option(
                        stage.name(), stage.word(), stage == bench.job().stage()))
                .toList();
    }

    private StageRow stage(Stage stage) {
        List<PlannedStep> steps = bench.plan().order().stream()
                .filter(step -> step.step().stage() == stage)
                .toList();
        long good = steps.stream()
                .filter(step -> step.state() instanceof StepState.Good)
                .count();
        return new StageRow(
                OnBench.capital(stage.word()),
                good == steps.size() ? "done" : "%d of %d done".formatted(good, steps.size()),
                steps.stream().map(this::row).toList());
    }

    private StepRow row(PlannedStep step) {
        return new StepRow(
                step.step().id(),
                step.step().words(),
                State.of(step.state()),
                why(step.state()),
                acts(step.state()),
                keys.get());
    }

    private String why(StepState state) {
        return switch (state) {
            case StepState.Recheck recheck ->
                recheck.waitsFor().isEmpty() ? recheck.why() : recheck.why() + "; first " + words(recheck.waitsFor());
            case StepState.Waiting waiting -> "after " + words(waiting.needs());
            case StepState.Ready ready -> "";
            case StepState.Good good -> "";
        };
    }

    private static List<Act> acts(StepState state) {
        return switch (state) {
            case StepState.Ready ready -> List.of(DONE);
            case StepState.Recheck recheck -> recheck.waitsFor().isEmpty() ? List.of(RIGHT, AGAIN) : List.of();
            case StepState.Good good -> List.of(CHANGED);
            case StepState.Waiting waiting -> List.of();
        };
    }

    /** The first of what it waits for; naming them all would bury it. */
    private String words(List<String> steps) {
        String first = bench.plan().order().stream()
                .map(PlannedStep::step)
                .filter(step -> step.id().equals(steps.getFirst()))
                .map(step -> step.words())
                .findFirst()
                .orElse(steps.getFirst());
        String more = steps.size() == 1 ? "" : " and %d more".formatted(steps.size() - 1);
        return "“" + first + "”" + more;
    }
}
