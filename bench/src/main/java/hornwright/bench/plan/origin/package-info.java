/**
 * How much of a horn is as it left the factory: what the bench judged at each place, held against what the archive knows of
 * horns near this serial. Main type: {@link hornwright.bench.plan.origin.OriginalityStatement}. It changes nothing in the
 * plan and proves nothing; every line that speaks of the factory carries its grade. Read first
 * {@link hornwright.bench.archive.Grade}.
 */
@NullMarked
package hornwright.bench.plan.origin;

import org.jspecify.annotations.NullMarked;
