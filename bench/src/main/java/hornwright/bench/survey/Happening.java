package hornwright.bench.survey;

/** One thing of a job's course that a signature may be older than. */
public sealed interface Happening {
    /** The work has come to this stage, which signs off all up to it. */
    record Reached(Stage stage) implements Happening {}

    /** Work done, or a step signed off. */
    record Worked(WorkDone work) implements Happening {}

    record Settled(Decision decision) implements Happening {}

    /** A decision taken back, by what it was about. */
    record Dropped(String about) implements Happening {}

    /** A measurement that steps are made to suit. */
    record Measured(Reading reading) implements Happening {}

    /** A measurement said to have been wrong, by its id. */
    record Withdrawn(String reading) implements Happening {}
}
