/**
 * A pad on the rim of a tone hole: where it touches, what gap is left, how much it leaks, what closes it.
 *
 * <p>Main type: {@link hornwright.engines.seat.Seat}. Does not know key names, and takes the pad as a ring of separate
 * springs: what happens across the width of the seat is not computed. Read first: K. L. Johnson, Contact Mechanics,
 * 1985, section 4.3 (the elastic foundation).
 */
@NullMarked
package hornwright.engines.seat;

import org.jspecify.annotations.NullMarked;
