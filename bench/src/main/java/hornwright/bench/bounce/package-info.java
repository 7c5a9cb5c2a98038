/**
 * How soon a key opens, how hard its foot lands and whether it bounces, from the horn's own masses, arms and springs and
 * the shop's table of materials; and what counting bounces says about a material.
 *
 * <p>Main type: {@link hornwright.bench.bounce.KeyBounce}. The motion is the action engine's. Read
 * {@code docs/method/action.md} and {@code docs/method/materials.md} first.
 */
@NullMarked
package hornwright.bench.bounce;

import org.jspecify.annotations.NullMarked;
