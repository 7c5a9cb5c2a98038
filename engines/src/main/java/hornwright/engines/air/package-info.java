/**
 * Input impedance of a bore with tone holes, its resonances for every fingering, and what each pad height does to them.
 *
 * <p>Main type: {@link hornwright.engines.air.AirColumn}. Does not know notes, keys or makers. Waves are plane: what a
 * strongly flaring bell does to the lowest notes is not computed. Read first: A. Chaigne and J. Kergomard, Acoustics of
 * Musical Instruments, 2016, chapters 5 and 7.
 */
@NullMarked
package hornwright.engines.air;

import org.jspecify.annotations.NullMarked;
