/**
 * The shelf of horns, and the one box that finds anything on it.
 *
 * <p>Main type: {@link hornwright.desk.web.shelf.ShelfPages}. It opens a horn and changes none. Read {@code docs/guide/pages.md} first.
 */
@NullMarked
package hornwright.desk.web.shelf;

import org.jspecify.annotations.NullMarked;
