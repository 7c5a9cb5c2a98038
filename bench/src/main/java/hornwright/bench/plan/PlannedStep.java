package hornwright.bench.plan;

import hornwright.bench.work.Step;
import hornwright.bench.work.StepState;

/** One step of the work with where it stands. */
public record PlannedStep(Step step, StepState state) {}
