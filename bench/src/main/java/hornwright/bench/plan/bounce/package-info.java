/**
 * Whether a key that its spring opens bounces, and what other pad centres and bumpers would do.
 *
 * <p>Main type: {@link hornwright.bench.plan.bounce.BounceChapter}. It orders nothing and proposes no treatment. Read {@code
 * docs/method/feel.md} first.
 */
@NullMarked
package hornwright.bench.plan.bounce;

import org.jspecify.annotations.NullMarked;
