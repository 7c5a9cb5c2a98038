/**
 * The plan of a horn, why each number is what it is, its papers, and its linked keys.
 *
 * <p>Main type: {@link hornwright.desk.web.plan.PlanPages}. It reckons nothing. Read {@code docs/guide/pages.md} first.
 */
@NullMarked
package hornwright.desk.web.plan;

import org.jspecify.annotations.NullMarked;
