/**
 * The verbs of the shop: what a person can do, one class a verb, shared by pages and commands, so that what one can do the
 * other can. Each checks what it is given, makes edits, and appends them through {@link hornwright.desk.use.Shop}.
 *
 * <p>Main type: {@link hornwright.desk.use.Shop}. It knows no HTTP, no SQL and no options of the command line, and
 * computes nothing of the trade. Read first: {@link hornwright.desk.use.RecordReading}.
 */
@NullMarked
package hornwright.desk.use;

import org.jspecify.annotations.NullMarked;
