/**
 * Sheets for a part of the horn: key fit, tone holes, neck, octave and low table, leaks, body and finish.
 *
 * <p>Main type: {@link hornwright.desk.web.sheets.SheetPages}. Each answer comes from the bench. Read {@code docs/guide/pages.md} first.
 */
@NullMarked
package hornwright.desk.web.sheets;

import org.jspecify.annotations.NullMarked;
