/**
 * Where coupled keys come to rest, and the thicknesses that make their pads land together.
 *
 * <p>Keys turn by small angles on springs and push on one another, on pads and on stops through contacts that can push
 * but not pull. Main type: {@link hornwright.engines.linkage.Linkage}; {@link hornwright.engines.linkage.Balance} alone
 * for many loads on the same keys. Knows keys only as ids: no notes, no materials, no tolerance of any shop; no friction
 * and no motion. Read first: J. Nocedal and S. J. Wright, Numerical Optimization, 2006, chapter 16 (from memory), then
 * {@code docs/method/linkage.md}.
 */
@NullMarked
package hornwright.engines.linkage;

import org.jspecify.annotations.NullMarked;
