/**
 * A job as the sum of its edits: every change is a small immutable {@link hornwright.bench.job.Edit}, and what a job,
 * the archive, the stock or the shop rules are is the fold of the edits of their stream.
 *
 * <p>Main type: {@link hornwright.bench.job.History}. This package does not store anything, does not know JSON, and
 * computes no plan. Read first: {@link hornwright.bench.job.Edit}.
 */
@NullMarked
package hornwright.bench.job;

import org.jspecify.annotations.NullMarked;
