/**
 * A key let go: opening, impact, rebounds, settling, touch weight; inertia from parts; contact of a foot with a bumper.
 *
 * <p>Main type: {@link hornwright.engines.action.Action}. Knows nothing of pads or notes, and moves one key alone. Read
 * first: K. H. Hunt and F. R. E. Crossley, Coefficient of restitution interpreted as damping in vibroimpact, 1975.
 */
@NullMarked
package hornwright.engines.action;

import org.jspecify.annotations.NullMarked;
