/**
 * The horn leaves: before and after, what stays and what cannot be undone.
 *
 * <p>Main type: {@link hornwright.desk.web.handover.HandOverPages}. It changes nothing but that it was handed over. Read {@code docs/guide/pages.md} first.
 */
@NullMarked
package hornwright.desk.web.handover;

import org.jspecify.annotations.NullMarked;
