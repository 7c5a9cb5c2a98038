/**
 * How the action of one horn feels: what each touch asks for, how even the stacks are, the fewest springs to change, another
 * wire, and the balance of the keys that are held shut.
 *
 * <p>Main type: {@link hornwright.bench.plan.feel.FeelChapter}. It changes no spring and orders none. Read {@code
 * docs/method/feel.md} first.
 */
@NullMarked
package hornwright.bench.plan.feel;

import org.jspecify.annotations.NullMarked;
