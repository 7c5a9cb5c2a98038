package hornwright.bench.plan.instead;

import hornwright.bench.plan.PlanInputs;

/** Everything the answer depends on: the whole of what a plan is made from, and the place. */
public record InsteadQuestion(PlanInputs inputs, String place) {}
