/**
 * Notes in recorded sound: pitch, cents, spread.
 *
 * <p>Main type: Pitch. Does not record and does not transpose keys.
 */
@NullMarked
package hornwright.engines.pitch;

import org.jspecify.annotations.NullMarked;
