/**
 * Equilibrium of coupled keys with one-sided contacts; thicknesses that close all pads together; order of the bench.
 *
 * <p>Main type: Linkage. Knows keys only as ids.
 */
@NullMarked
package hornwright.engines.linkage;

import org.jspecify.annotations.NullMarked;
