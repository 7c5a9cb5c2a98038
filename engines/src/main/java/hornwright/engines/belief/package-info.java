/**
 * Change-over of a material along positions, exact over all segmentations.
 *
 * <p>Main type: Belief. Does not know horns.
 */
@NullMarked
package hornwright.engines.belief;

import org.jspecify.annotations.NullMarked;
