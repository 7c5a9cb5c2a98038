/**
 * The readings that still count: stale ones set aside with their reason, repeats averaged, and each turned into a number
 * with unit, uncertainty and because.
 *
 * <p>Main type: {@link hornwright.bench.plan.measured.Measurements}. It draws no conclusion about the horn. Read
 * {@link hornwright.bench.plan.measured.Freshness} first: it says which work voids which reading.
 */
@NullMarked
package hornwright.bench.plan.measured;

import org.jspecify.annotations.NullMarked;
