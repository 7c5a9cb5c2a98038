/**
 * Input impedance of a bore with tone holes, its resonances for every fingering, and what each pad height does to them.
 *
 * <p>Main type: AirColumn. Does not know notes, keys or makers.
 */
@NullMarked
package hornwright.engines.air;

import org.jspecify.annotations.NullMarked;
