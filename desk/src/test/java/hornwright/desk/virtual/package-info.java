/**
 * The virtual bench: horns whose truth is known, measured with real instruments' errors, planned by the planner from ten
 * minutes, an hour and all readings, and put together by a hand that errs; beside it the usual way, frozen.
 *
 * <p>It needs the keywork files, which only the desk can read, and settles nothing the plan does. Read {@code
 * docs/method/virtual-bench.md} first.
 */
@NullMarked
package hornwright.desk.virtual;

import org.jspecify.annotations.NullMarked;
