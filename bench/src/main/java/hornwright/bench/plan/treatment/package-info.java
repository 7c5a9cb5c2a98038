/**
 * What is done with each place: keep, clean, refit, replace like for like, make; least intrusive first. Also what keeping
 * and replacing side by side does to linked pads, and what stamped numbers say about parts of another horn.
 *
 * <p>Main type: {@link hornwright.bench.plan.treatment.TreatmentChapter}. It sizes nothing. Read
 * {@link hornwright.bench.plan.treatment.Proposal} first.
 */
@NullMarked
package hornwright.bench.plan.treatment;

import org.jspecify.annotations.NullMarked;
