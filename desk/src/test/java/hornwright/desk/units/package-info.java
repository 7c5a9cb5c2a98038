/** Typed amounts, with the marks and mistakes of people and of calipers that type. */
@NullMarked
package hornwright.desk.units;

import org.jspecify.annotations.NullMarked;
