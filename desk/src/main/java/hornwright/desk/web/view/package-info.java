/**
 * Shapes that more than one page shows: a figure with its because, a state, the next thing to do, the panel of a place.
 *
 * <p>Main type: {@link hornwright.desk.web.view.Frame}. No request is known here. Read {@code docs/guide/pages.md} first.
 */
@NullMarked
package hornwright.desk.web.view;

import org.jspecify.annotations.NullMarked;
