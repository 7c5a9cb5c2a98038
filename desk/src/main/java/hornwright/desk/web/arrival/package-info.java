/**
 * A horn comes in: whose it is, what was agreed, which photographs are wanted.
 *
 * <p>Main type: {@link hornwright.desk.web.arrival.ArrivalPages}. The photographs themselves are in the room of photographs. Read {@code docs/guide/pages.md} first.
 */
@NullMarked
package hornwright.desk.web.arrival;

import org.jspecify.annotations.NullMarked;
