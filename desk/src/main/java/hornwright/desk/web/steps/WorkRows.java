package hornwright.desk.web.steps;

import hornwright.bench.horn.Cup;
import hornwright.bench.horn.Key;
import hornwright.bench.plan.PlanInputs;
import hornwright.bench.plan.PlannedStep;
import hornwright.bench.plan.regulation.SettledContact;
import hornwright.bench.rules.ShopRules;
import hornwright.bench.steps.Rest;
import hornwright.bench.steps.StageClock;
import hornwright.bench.steps.StepState;
import hornwright.bench.steps.WorkGraph;
import hornwright.bench.survey.AgreedUse;
import hornwright.bench.survey.Stage;
import hornwright.desk.web.plan.SettledRows;
import hornwright.desk.web.steps.WorkPage.Act;
import hornwright.desk.web.steps.WorkPage.StageRow;
import hornwright.desk.web.steps.WorkPage.StepRow;
import hornwright.desk.web.view.Clocks;
import hornwright.desk.web.view.Frame;
import hornwright.desk.web.view.Next;
import hornwright.desk.web.view.OnBench;
import hornwright.desk.web.view.PlacePanel;
import hornwright.desk.web.view.State;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
    private final ShopRules rules;
    private final SettledRows contacts;
    private final Supplier<String> keys;
    private final Instant now;
    private final WorkGraph graph;
    private final StageClock clock;
    private final LapseRows lapses;

    /** @param keys makes a fresh key for each form */
    public WorkRows(OnBench bench, PlanInputs inputs, Supplier<String> keys, Instant now) {
        this.bench = bench;
        this.rules = inputs.rules();
        this.contacts = new SettledRows(bench, SettledContact.of(inputs));
        this.lapses = new LapseRows(inputs);
        this.keys = keys;
        this.now = now;
        this.graph = WorkGraph.of(
                bench.plan().order().stream().map(PlannedStep::step).toList());
        this.clock = StageClock.of(bench.job().readings().current());
    }

    /** @param voided what no longer counts since the stage just said; empty when none was */
    public WorkPage page(Frame frame, String said, String voided) {
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
                clock(),
                rest(),
                contacts.rows(keys.get()),
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
                        .toList(),
                voided,
                lapses.ahead(),
                lapses.already());
    }

    private WorkPage.Clock clock() {
        StageClock.Running running = clock.running();
        if (running != null) {
            String line = "%s, running for %s".formatted(running.stage().word(), time(running.minutes(now)));
            return new WorkPage.Clock(line, running.stage().name(), true);
        }
        Stage next = bench.plan().order().stream()
                .filter(step -> !(step.state() instanceof StepState.Good))
                .map(step -> step.step().stage())
                .findFirst()
                .orElse(Stage.RESTED);
        double soFar = clock.minutes(next);
        return new WorkPage.Clock(next.word() + (soFar > 0 ? ", " + time(soFar) + " so far" : ""), next.name(), false);
    }

    private String rest() {
        Map<String, StepState> states = new HashMap<>();
        bench.plan().order().forEach(step -> states.put(step.step().id(), step.state()));
        return Rest.of(states, bench.job().work(), hours("rest.least_h"), hours("rest.most_h"))
                .map(rest -> rest.tooEarly(now)
                        ? "Resting since %s. The second round makes sense from %s on."
                                .formatted(Clocks.when(rest.begun(), now), Clocks.when(rest.earliest(), now))
                        : rest.overdue(now)
                                ? "Rested since %s: the second round is due.".formatted(Clocks.when(rest.begun(), now))
                                : "Rested long enough: go round a second time before %s."
                                        .formatted(Clocks.when(rest.latest(), now)))
                .orElse("");
    }

    private Duration hours(String rule) {
        return Duration.ofMinutes(Math.round(60 * rules.value(rule)));
    }

    /** "42 min", "3 h 05". */
    static String time(double minutes) {
        long whole = Math.round(minutes);
        return whole < 60 ? whole + " min" : "%d h %02d".formatted(whole / 60, whole % 60);
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
                (good == steps.size() ? "done" : "%d of %d done".formatted(good, steps.size()))
                        + (clock.minutes(stage) > 0 ? ", " + time(clock.minutes(stage)) : "")
                        + spared(stage),
                steps.stream().map(this::row).toList());
    }

    /** What was found to need nothing and so is no step. */
    private String spared(Stage stage) {
        long without = switch (stage) {
            case SPRINGS_SOUND ->
                without("spring.", bench.keywork().keys().stream().map(Key::id));
            case KEYS_FITTED -> without("fit.", bench.keywork().keys().stream().map(Key::id));
            case HOLES_LEVEL ->
                without("level.", bench.keywork().cups().stream().map(Cup::hole));
            default -> 0;
        };
        return without == 0 ? "" : "; nothing to do at " + without;
    }

    private long without(String step, Stream<String> things) {
        return things.filter(thing -> !graph.contains(step + thing)).count();
    }

    private StepRow row(PlannedStep step) {
        return new StepRow(
                step.step().id(),
                contacts.of(step.step().of())
                        .map(what -> step.step().words() + ": " + what)
                        .orElse(step.step().words()),
                step.step().id().startsWith("regulate.") ? bench.address("links") : "",
                State.of(step.state()),
                why(step),
                acts(step.state()),
                keys.get());
    }

    private String why(PlannedStep step) {
        return switch (step.state()) {
            case StepState.Recheck recheck ->
                recheck.waitsFor().isEmpty() ? recheck.why() : recheck.why() + "; first " + words(recheck.waitsFor());
            case StepState.Waiting waiting -> "after " + words(waiting.needs());
            case StepState.Ready ready -> "";
            case StepState.Good good ->
                resting(graph.allRestingOn(step.step().id()).size());
        };
    }

    /** What a change of this step would bring back. */
    private static String resting(int steps) {
        return steps == 0 ? "" : steps == 1 ? "one step rests on it" : steps + " steps rest on it";
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
