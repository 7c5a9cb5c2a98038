/**
 * The work itself: steps, what they need and undo, trays and the clock.
 *
 * <p>Main type: {@link hornwright.desk.web.steps.WorkPages}. The order comes from the bench. Read {@code docs/guide/pages.md} first.
 */
@NullMarked
package hornwright.desk.web.steps;

import org.jspecify.annotations.NullMarked;
