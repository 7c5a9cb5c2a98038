/**
 * Needle and flat springs as cantilevers, small and large deflection, stress, choice from standard sizes.
 *
 * <p>Main type: Spring. Does not know keys.
 */
@NullMarked
package hornwright.engines.spring;

import org.jspecify.annotations.NullMarked;
