package hornwright.bench.plan.order;

import hornwright.bench.horn.Keywork;
import hornwright.bench.horn.Place;
import hornwright.bench.plan.Reasons;
import hornwright.bench.plan.measured.ReadNumbers;
import hornwright.bench.steps.Disturbances;
import hornwright.bench.steps.Step;
import hornwright.bench.steps.WorkEvent;
import hornwright.bench.steps.WorkGraph;
import hornwright.bench.survey.Decision;
import hornwright.bench.survey.Happening;
import hornwright.bench.survey.Reading;
import hornwright.bench.survey.Stage;
import hornwright.bench.survey.WorkDone;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * The course of a job as signatures and disturbances. A decision or a measurement disturbs its step only when the step
 * was last signed on another one: changed and changed back before anybody signed, it asks for nothing.
 */
final class OrderEvents {
    private final OrderChapter.Question ask;
    private final WorkGraph graph;
    private final Demands demands;
    private final Disturbances disturbances;
    private final ReadNumbers read;
    private final Map<String, Wish> wishes = new LinkedHashMap<>();
    private final Map<String, Decision> decided = new LinkedHashMap<>();

    /** With a place kept free for each disturbance that may turn out to be one. */
    private final List<@Nullable WorkEvent> events = new ArrayList<>();

    /** What one decision or measurement wants of a step now, and what the step was last signed on. */
    private static final class Wish {
        private final String step;
        private Wanted signedOn = new Wanted.Nothing();
        private Wanted now = new Wanted.Nothing();
        private int at = -1;
        private Function<Wanted, String> why = was -> "";

        Wish(String step) {
            this.step = step;
        }
    }

    private OrderEvents(OrderChapter.Question ask, WorkGraph graph) {
        this.ask = ask;
        this.graph = graph;
        this.demands = new Demands(ask.keywork(), graph);
        this.disturbances = new Disturbances(graph);
        this.read = new ReadNumbers(ask.rules(), new Reasons());
    }

    static List<WorkEvent> of(OrderChapter.Question ask, WorkGraph graph) {
        return new OrderEvents(ask, graph).all();
    }

    private List<WorkEvent> all() {
        List<Happening> happenings = ask.chronicle().happenings();
        List<Stage> reached = standing(happenings);
        if (reached.isEmpty() || reached.getLast() != ask.stage()) {
            reach(ask.stage());
        }
        int stages = 0;
        for (Happening happening : happenings) {
            switch (happening) {
                case Happening.Reached stage -> reach(reached.get(stages++));
                case Happening.Worked worked -> work(worked.work());
                case Happening.Settled settled -> settle(settled.decision());
                case Happening.Dropped dropped -> drop(dropped.about());
                case Happening.Measured measured -> measure(measured.reading());
                case Happening.Withdrawn withdrawn -> withdraw(withdrawn.reading());
            }
        }
        ask.chronicle().without(ask.done()).forEach(this::work);
        wishes.values().forEach(this::close);
        return events.stream().filter(Objects::nonNull).toList();
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
                add(new WorkEvent.SignedOff(step.id(), false));
            }
        }
    }

    private void work(WorkDone work) {
        disturbances.of(work, name(work.of())).ifPresent(this::add);
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
            wish(decision.about() + " " + step, step, wanted, was -> why);
        }
    }

    private void measure(Reading reading) {
        String topic = "%s %s %s".formatted(reading.kind().word(), reading.of(), reading.point());
        demands.stepOf(reading)
                .ifPresent(step -> read.amount(reading).ifPresent(number -> {
                    Wanted.Read now = new Wanted.Read(reading.id(), reading.series(), number);
                    wish(
                            topic,
                            step,
                            now,
                            was -> was instanceof Wanted.Read before ? demands.why(reading, now, before) : "");
                }));
    }

    /** As if it had never been read; what was signed on it stays so until the next reading says otherwise. */
    private void withdraw(String reading) {
        for (Wish wish : wishes.values()) {
            if (wish.now instanceof Wanted.Read now && now.id().equals(reading)) {
                wish.now = wish.signedOn;
            }
        }
    }

    private void wish(String topic, String step, Wanted wanted, Function<Wanted, String> why) {
        Wish wish = wishes.computeIfAbsent(topic, none -> new Wish(step));
        wish.now = wanted;
        wish.why = why;
        if (wanted instanceof Wanted.Read && wish.signedOn instanceof Wanted.Nothing) {
            wish.signedOn = wanted;
        }
        wish.at = events.size();
        events.add(null);
    }

    private void add(WorkEvent event) {
        if (event instanceof WorkEvent.SignedOff) {
            wishes.values().stream()
                    .filter(wish -> wish.step.equals(event.step()))
                    .forEach(this::close);
        }
        events.add(event);
    }

    /** Its step is signed, or all is told: now it shows whether something else was wanted than before. */
    private void close(Wish wish) {
        if (wish.now.differsFrom(wish.signedOn)) {
            events.set(wish.at, new WorkEvent.Disturbed(wish.step, wish.why.apply(wish.signedOn)));
        }
        wish.signedOn = wish.now;
    }

    /** The trade name of what was worked on; steps and unknown things keep their id. */
    private String name(String of) {
        Keywork keywork = ask.keywork();
        String bare = of.replaceFirst("^cup\\.", "");
        return keywork.keys()
                .find(bare)
                .map(key -> key.name().display())
                .or(() -> keywork.places().find(of).map(Place::display))
                .orElse(of);
    }
}
