/**
 * Tone holes: how level a rim is, what may be done to a rim of its kind, where to stop, and what the pad then needs.
 *
 * <p>Main type: {@link hornwright.bench.rim.RimSheet}. It never takes metal off by itself: the choice is the bench's and
 * the owner's. Read {@link hornwright.bench.rim.RimRemedies} for ways and stop lines.
 */
@NullMarked
package hornwright.bench.rim;

import org.jspecify.annotations.NullMarked;
