/**
 * The plan of a restoration: for every place what was there, what is there and what is done; every size with its
 * window, its uncertainty and its because; the order of work; what is still missing and what it would decide.
 *
 * <p>Main types: {@link hornwright.bench.plan.Planner}, a pure function of {@link hornwright.bench.plan.PlanInputs}, and
 * {@link hornwright.bench.plan.Plan}. It measures nothing, prints nothing and keeps nothing. The chapters live in the
 * packages below; read {@code docs/guide/plan.md} first.
 */
@NullMarked
package hornwright.bench.plan;

import org.jspecify.annotations.NullMarked;
