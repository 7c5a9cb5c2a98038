/**
 * How high each cup stands open and what at its foot or guard makes it so: heights at a stated point, the thickness that
 * gives the height wanted, the sheet to cut it from, what the material loses in the first weeks, and the odd one out along
 * a stack.
 *
 * <p>Main type: {@link hornwright.bench.plan.heights.HeightChapter}. It does not advise other heights than the factory's or
 * a person's. Read {@code docs/method/heights.md} first.
 */
@NullMarked
package hornwright.bench.plan.heights;

import org.jspecify.annotations.NullMarked;
