package hornwright.bench.plan;

import hornwright.bench.steps.Step;
import hornwright.bench.steps.StepState;

/** One step of the work with where it stands. */
public record PlannedStep(Step step, StepState state) {}
