package hornwright.bench.steps;

import hornwright.bench.survey.WorkDone;
import java.util.Optional;
import java.util.stream.Stream;

/** What bench work reported on a job means for the steps: it changes the result of one of them. */
public final class Disturbances {
    private final WorkGraph graph;

    public Disturbances(WorkGraph graph) {
        this.graph = graph;
    }

    /** The event of this work, or nothing when no step of this horn is concerned. */
    public Optional<WorkEvent> of(WorkDone work, String nameOfThing) {
        String why = "%s: %s".formatted(nameOfThing, work.kind().word());
        return stepsOf(work).filter(graph::contains).findFirst().map(id -> switch (work.kind()) {
            case PAD_FITTED, SIGNED_OFF -> new WorkEvent.SignedOff(id, true);
            case FOUND_RIGHT -> new WorkEvent.SignedOff(id, false);
            case ARM_BENT, CUP_LEVELLED, HOLE_LEVELLED, KEY_FITTED, FOOT_CHANGED, LINK_CHANGED, SPRING_CHANGED ->
                new WorkEvent.Disturbed(id, why);
        });
    }

    private static Stream<String> stepsOf(WorkDone work) {
        String of = work.of().replaceFirst("^(cup|link|foot|guard)\\.", "");
        return switch (work.kind()) {
            case ARM_BENT -> Stream.of("arm." + of);
            case CUP_LEVELLED -> Stream.of("cup." + of);
            case HOLE_LEVELLED -> Stream.of("level." + of);
            case KEY_FITTED -> Stream.of("fit." + of);
            case FOOT_CHANGED -> Stream.of("cork.foot." + of, "cork.guard." + of);
            case LINK_CHANGED -> Stream.of("regulate." + of);
            case PAD_FITTED -> Stream.of("pad." + of);
            case SPRING_CHANGED -> Stream.of("spring." + of);
            case SIGNED_OFF, FOUND_RIGHT -> Stream.of(work.of());
        };
    }
}
