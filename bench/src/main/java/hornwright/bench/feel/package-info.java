/**
 * How the action feels under the fingers: what each touch asks for, how even the stacks are, and the fewest springs that
 * would even them out.
 *
 * <p>Main types: {@link hornwright.bench.feel.TouchForces} and {@link hornwright.bench.feel.Evening}. Every stated
 * effect of a change is the linkage engine run again with that change; nothing is scaled by hand. Springs are changed as
 * torques; which wire gives a torque is the spring engine's. Read {@code docs/method/linkage.md} first.
 */
@NullMarked
package hornwright.bench.feel;

import org.jspecify.annotations.NullMarked;
