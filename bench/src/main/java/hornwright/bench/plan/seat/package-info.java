/**
 * How the pads of one horn close at a light touch: the gap and the leak that are left, the force that seals, and what to do
 * about it in the order of how little it intrudes.
 *
 * <p>Main type: {@link hornwright.bench.plan.seat.SeatChapter}. It passes no horn: that is for a test of every site. Read
 * {@code docs/method/closing.md} first.
 */
@NullMarked
package hornwright.bench.plan.seat;

import org.jspecify.annotations.NullMarked;
