/**
 * Job files and the plans made of them: the strict reader of JOB.json, and plan.json, order-list.csv and prep-list.csv.
 *
 * <p>Main types: {@link hornwright.desk.jobfile.JobFile} and {@link hornwright.desk.jobfile.PlanJson}. It computes
 * nothing and writes no file itself. Read {@code docs/guide/plan.md} first.
 */
@NullMarked
package hornwright.desk.jobfile;

import org.jspecify.annotations.NullMarked;
