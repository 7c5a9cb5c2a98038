/**
 * Flow of air through slots and holes, the equivalent sharp-edged hole, decay of pressure.
 *
 * <p>Main type: Leak. Does not know pads.
 */
@NullMarked
package hornwright.engines.leak;

import org.jspecify.annotations.NullMarked;
