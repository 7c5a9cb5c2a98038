/**
 * A key let go: opening, impact, rebounds, settling, touch weight.
 *
 * <p>Main type: Action. Knows nothing of pads or notes.
 */
@NullMarked
package hornwright.engines.action;

import org.jspecify.annotations.NullMarked;
