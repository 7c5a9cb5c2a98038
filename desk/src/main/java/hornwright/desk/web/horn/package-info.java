/**
 * The horn unrolled, a layer at a time, and the place in hand.
 *
 * <p>Main type: {@link hornwright.desk.web.horn.HornPages}. It draws nothing itself: the drawing comes from the keywork. Read {@code docs/guide/pages.md} first.
 */
@NullMarked
package hornwright.desk.web.horn;

import org.jspecify.annotations.NullMarked;
