/**
 * The order of work with where each step stands, and the order in which rods and keys come off.
 *
 * <p>Main type: {@link hornwright.bench.plan.order.OrderChapter}. The steps themselves are those of
 * {@link hornwright.bench.steps.BenchSteps}, to be read first.
 */
@NullMarked
package hornwright.bench.plan.order;

import org.jspecify.annotations.NullMarked;
