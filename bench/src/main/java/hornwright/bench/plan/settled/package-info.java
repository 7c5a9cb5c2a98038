/**
 * Heights and regulation once what was laid new has packed down, and the day to look again.
 *
 * <p>Main type: {@link hornwright.bench.plan.settled.SettledChapter}. It proposes no thickness and is reckoned only where
 * it is shown. Read {@code docs/method/materials.md} first.
 */
@NullMarked
package hornwright.bench.plan.settled;

import org.jspecify.annotations.NullMarked;
