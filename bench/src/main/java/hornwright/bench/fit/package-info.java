/**
 * How keys sit on their rods, what their play does at the cup, and what takes it out. It comes before every pad.
 *
 * <p>Main type: {@link hornwright.bench.fit.FitSheet}. It measures nothing and sizes no pad; that pad numbers wait for a
 * key is said by the plan. Read {@link hornwright.bench.fit.FitRemedies} for what is done and where to stop.
 */
@NullMarked
package hornwright.bench.fit;

import org.jspecify.annotations.NullMarked;
