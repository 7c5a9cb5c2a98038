package hornwright.bench.steps;

/** What happened at the bench, as far as the order of work cares. */
public sealed interface WorkEvent {
    String step();

    /**
     * A step was done, or looked at again and found right.
     *
     * @param changed whether its result differs from before; the first time it always does
     */
    record SignedOff(String step, boolean changed) implements WorkEvent {}

    /**
     * The result of a step was changed by later work: an arm bent after its pad was signed off.
     *
     * @param why in words: "F♯ arm bent"
     */
    record Disturbed(String step, String why) implements WorkEvent {}
}
