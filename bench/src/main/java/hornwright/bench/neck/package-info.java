/**
 * The neck: whether its tenon is round and straight, how it clamps and seals, what a leak there does to the notes, and
 * how thick its cork is cut.
 *
 * <p>Main type: {@link hornwright.bench.neck.NeckSheet}. It prescribes no expander and no force: a hundredth at a time.
 * Read {@link hornwright.bench.neck.Tenon} first.
 */
@NullMarked
package hornwright.bench.neck;

import org.jspecify.annotations.NullMarked;
