/**
 * Propagation of uncertainty, first order and by Monte Carlo.
 *
 * <p>Main type: Uncertainty. Does not know what the numbers mean.
 */
@NullMarked
package hornwright.engines.uncertainty;

import org.jspecify.annotations.NullMarked;
