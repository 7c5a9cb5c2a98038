/**
 * Where heights and links will be once fresh cork and felt have packed down, and when to look again.
 *
 * <p>Main type: {@link hornwright.bench.settling.Settling}. It proposes no thickness; the plan does. Read
 * {@code docs/method/materials.md} first.
 */
@NullMarked
package hornwright.bench.settling;

import org.jspecify.annotations.NullMarked;
