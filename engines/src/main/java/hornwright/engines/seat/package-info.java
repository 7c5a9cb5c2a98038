/**
 * A pad on the rim of a tone hole: where it touches, what gap is left, how much it leaks, what closes it.
 *
 * <p>Main type: Seat. Does not know key names.
 */
@NullMarked
package hornwright.engines.seat;

import org.jspecify.annotations.NullMarked;
