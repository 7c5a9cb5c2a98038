/**
 * What to measure or look at next, most useful first: each wish with what it would decide, weighed against the seconds it
 * takes.
 *
 * <p>Main type: {@link hornwright.bench.plan.missing.MissingChapter}. It asks for nothing that is never worth measuring
 * (link arms, spring sets, masses). Read {@link hornwright.bench.plan.missing.Worth} first.
 */
@NullMarked
package hornwright.bench.plan.missing;

import org.jspecify.annotations.NullMarked;
