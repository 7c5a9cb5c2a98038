/**
 * Readings: the grid, one point at a time, and the caliper that types.
 *
 * <p>Main type: {@link hornwright.desk.web.measure.MeasurePages}. What a reading means is for the plan. Read {@code docs/guide/pages.md} first.
 */
@NullMarked
package hornwright.desk.web.measure;

import org.jspecify.annotations.NullMarked;
