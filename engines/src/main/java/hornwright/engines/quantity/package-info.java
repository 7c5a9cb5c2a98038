/**
 * One record per dimension holding one SI double; measured values and where they come from.
 *
 * <p>Main type: Measured. No arithmetic beyond its own dimension.
 */
@NullMarked
package hornwright.engines.quantity;

import org.jspecify.annotations.NullMarked;
