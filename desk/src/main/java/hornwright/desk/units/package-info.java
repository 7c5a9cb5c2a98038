/**
 * Amounts as people and instruments type them: millimetres, inches with fractions, thousandths; point or comma.
 *
 * <p>Main type: {@link hornwright.desk.units.Typed}. What could be read two ways is refused with a question, never
 * guessed. It knows nothing of what is measured or whether the amount is likely. Source of the conversions: the
 * international inch is 25.4 mm and the standard gravity 9.80665 m/s², both exact by definition.
 */
@NullMarked
package hornwright.desk.units;

import org.jspecify.annotations.NullMarked;
