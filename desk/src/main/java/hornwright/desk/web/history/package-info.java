/**
 * Every edit of a horn, of the archive and of the shop, and the way to take one back.
 *
 * <p>Main type: {@link hornwright.desk.web.history.HistoryPages}. It rubs nothing out. Read {@code docs/guide/pages.md} first.
 */
@NullMarked
package hornwright.desk.web.history;

import org.jspecify.annotations.NullMarked;
