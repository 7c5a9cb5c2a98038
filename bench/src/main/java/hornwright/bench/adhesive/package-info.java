/**
 * How the adhesives found on one horn come off, group by group, and the rules of the room while they do.
 *
 * <p>Main type: {@link hornwright.bench.adhesive.AdhesiveSheet}. The ways themselves are those of
 * {@link hornwright.bench.care.AdhesiveRemoval}, to be read first. It gives no recipe and no limit of exposure.
 */
@NullMarked
package hornwright.bench.adhesive;

import org.jspecify.annotations.NullMarked;
