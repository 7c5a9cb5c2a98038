/**
 * Pad sizes: the diameter by the shop's rule, the thickness as a window with what each stocked thickness leaves to
 * float, what the trial pad says, the gaps a wrong thickness opens, and what to do when no pad fits.
 *
 * <p>Main type: {@link hornwright.bench.plan.pads.PadChapter}. It does not decide whether a pad is kept. Read
 * {@code docs/method/pad-stack.md} first.
 */
@NullMarked
package hornwright.bench.plan.pads;

import org.jspecify.annotations.NullMarked;
