/**
 * What was found and measured on one horn: readings, findings, decisions, and the work already done to it.
 *
 * <p>Main type: {@link hornwright.bench.survey.Reading}. It records and judges nothing; what follows from a reading is
 * the plan's business.
 */
@NullMarked
package hornwright.bench.survey;

import org.jspecify.annotations.NullMarked;
