package hornwright.bench.steps;

import java.util.List;

/** Where a step stands. */
public sealed interface StepState {
    /** Not done; waits for these, which are not done or no longer good. */
    record Waiting(List<String> needs) implements StepState {
        public Waiting {
            needs = List.copyOf(needs);
        }
    }

    /** Not done, and nothing stands in its way. */
    record Ready() implements StepState {}

    /** Done, and nothing it rests on has changed since. */
    record Good() implements StepState {}

    /**
     * Done, but something it rests on, or its own result, has changed.
     *
     * @param why one line: "F♯ arm bent"
     * @param waitsFor steps it rests on that must be looked at first; empty when it is its turn
     */
    record Recheck(String why, List<String> waitsFor) implements StepState {
        public Recheck {
            waitsFor = List.copyOf(waitsFor);
        }
    }
}
