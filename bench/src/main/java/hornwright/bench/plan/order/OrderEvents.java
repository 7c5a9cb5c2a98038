package hornwright.bench.plan.order;

import hornwright.bench.plan.measured.Freshness;
import hornwright.bench.steps.Disturbances;
import hornwright.bench.steps.Step;
import hornwright.bench.steps.WorkEvent;
import hornwright.bench.steps.WorkGraph;
import hornwright.bench.survey.Decision;
import hornwright.bench.survey.Happening;
import hornwright.bench.survey.Observed;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.ReadingKind;
import hornwright.bench.survey.RimChoice;
import hornwright.bench.survey.Stage;
import hornwright.bench.survey.WorkDone;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** The course of a job as signatures and disturbances. */
final class OrderEvents {
    private final OrderChapter.Question ask;
    private final WorkGraph graph;
    private final Demands demands;
    private final Disturbances disturbances;
    private final StepsOfReadings steps;
    private final Readout readout;
    private final Freshness freshness;
    private final ReadingWords words;
    private final Ledger ledger = new Ledger();
    private final Map<String, Decision> decided = new LinkedHashMap<>();
    private final Map<String, Reading> measured = new HashMap<>();

    private OrderEvents(OrderChapter.Question ask, WorkGraph graph) {
        this.ask = ask;
        this.graph = graph;
        this.demands = new Demands(ask.keywork(), graph);
        this.disturbances = new Disturbances(graph);
        this.steps = new StepsOfReadings(ask.keywork(), graph);
        this.readout = new Readout(ask.keywork(), ask.rules());
        this.words = new ReadingWords(ask.keywork());
        this.freshness = Freshness.of(
                ask.keywork(),
                ask.stage(),
                ask.chronicle().readings(),
                ask.done(),
                ask.chronicle().decisions(),
                ask.rules());
    }

    static List<WorkEvent> of(OrderChapter.Question ask, WorkGraph graph) {
        return new OrderEvents(ask, graph).all();
    }

    private List<WorkEvent> all() {
        List<Happening> happenings = ask.chronicle().happenings();
        List<Stage> reached = standing(happenings);
        if (reached.isEmpty() || reached.getLast() != ask.stage()) {
            happenings = earlierFirst(happenings);
            reach(ask.stage());
        }
        int stages = 0;
        for (Happening happening : happenings) {
            switch (happening) {
                case Happening.Reached stage -> reach(reached.get(stages++));
                case Happening.Worked worked -> work(worked.work());
                case Happening.Settled settled -> settle(settled.decision());
                case Happening.Dropped dropped -> drop(dropped.about());
                case Happening.Measured reading -> measure(reading.reading());
                case Happening.Withdrawn withdrawn -> ledger.withdraw(withdrawn.reading());
            }
        }
        ask.chronicle().without(ask.done()).forEach(this::work);
        return ledger.events();
    }

    /** Nobody wrote down when the stage was reached: what was read at an earlier one was read before it. */
    private List<Happening> earlierFirst(List<Happening> happenings) {
        List<Happening> later = new ArrayList<>();
        for (Happening happening : happenings) {
            if (happening instanceof Happening.Measured measured
                    && measured.reading().stage().compareTo(ask.stage()) < 0) {
                measure(measured.reading());
            } else {
                later.add(happening);
            }
        }
        return later;
    }

    /** The stages reached, each no further than the job was set back to later. */
    private List<Stage> standing(List<Happening> happenings) {
        List<Stage> reached = new ArrayList<>();
        Stage most = ask.stage();
        for (Happening happening : happenings.reversed()) {
            if (happening instanceof Happening.Reached stage) {
                most = stage.stage().compareTo(most) < 0 ? stage.stage() : most;
                reached.addFirst(most);
            }
        }
        return reached;
    }

    /** Signs off all up to a stage; what was good already is not changed by it. */
    private void reach(Stage stage) {
        if (stage == Stage.ARRIVAL) {
            return;
        }
        for (Step step : graph.steps()) {
            if (step.stage().compareTo(stage) <= 0) {
                ledger.sign(step.id(), false);
            }
        }
        lapse(reading -> freshness.voidingStage(reading, stage).isPresent());
    }

    private void work(WorkDone work) {
        disturbances.of(work, words.name(work.of())).ifPresent(event -> {
            switch (event) {
                case WorkEvent.SignedOff signed -> ledger.sign(signed.step(), signed.changed());
                case WorkEvent.Disturbed disturbed -> ledger.disturb(disturbed.step(), disturbed.why());
            }
        });
        lapse(reading -> freshness.voids(work, reading));
    }

    private void lapse(Predicate<Reading> voided) {
        ledger.lapse(id -> measured.containsKey(id) && voided.test(measured.get(id)));
    }

    private void settle(Decision decision) {
        decided.put(decision.about(), decision);
        want(decision, new Wanted.Decided(decision.inWords()), demands.why(decision));
    }

    private void drop(String about) {
        Decision decision = decided.remove(about);
        if (decision != null) {
            want(decision, new Wanted.Nothing(), demands.whyDropped(decision));
        }
    }

    private void want(Decision decision, Wanted wanted, String why) {
        for (String step : demands.stepsOf(decision)) {
            ledger.want(decision.about() + " " + step, step, wanted, (is, was) -> why);
        }
    }

    private void measure(Reading reading) {
        measured.put(reading.id(), reading);
        steps.of(reading)
                .ifPresent(step -> Stream.concat(readout.before(reading).stream(), readout.of(reading).stream())
                        .forEach(wanted ->
                                ledger.want(topic(reading), step, wanted, (is, was) -> words.why(reading, is, was))));
        if (reading.kind() == ReadingKind.RIM_CHECK && reading.observed() instanceof Observed.Says says) {
            boolean left =
                    RimChoice.of(says.word()).filter(RimChoice.LEAVE::equals).isPresent();
            steps.of(reading).ifPresent(step -> ledger.accept(gap(reading.of()), step, left));
        }
    }

    /** Readings of one topic take each other's place; another trial pad is another trial. */
    private static String topic(Reading reading) {
        String stack = reading.observed() instanceof Observed.TrialPad trial ? " with " + trial.stackMm() : "";
        return "%s %s %s%s".formatted(reading.kind().word(), reading.of(), reading.point(), stack);
    }

    private static String gap(String hole) {
        return "%s %s ".formatted(ReadingKind.RIM_GAP.word(), hole);
    }
}
