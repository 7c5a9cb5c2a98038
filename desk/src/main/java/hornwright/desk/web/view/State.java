package hornwright.desk.web.view;

import hornwright.bench.plan.PlannedPlace;
import hornwright.bench.steps.StepState;

/** A state as a page writes it: an icon, a word and a colour, so that any one may be lost. */
public record State(String icon, String word) {
    public static final State PLANNED = new State("planned", "planned");
    public static final State DONE = new State("done", "done");
    public static final State RECHECK = new State("stale", "recheck");
    public static final State NOT_MEASURED = new State("missing", "not measured");

    public static State of(StepState state) {
        return switch (state) {
            case StepState.Good good -> DONE;
            case StepState.Recheck recheck -> RECHECK;
            case StepState.Ready ready -> new State("planned", "ready");
            case StepState.Waiting waiting -> new State("missing", "waits");
        };
    }

    /** Of a place that is not worked on yet. */
    public static State of(PlannedPlace place) {
        if (place.provisional() != null) {
            return new State("missing", "provisional");
        }
        return new State(
                switch (place.treatment()) {
                    case KEEP -> "done";
                    case DECIDE -> "contested";
                    default -> "planned";
                },
                place.treatment().spoken());
    }
}
