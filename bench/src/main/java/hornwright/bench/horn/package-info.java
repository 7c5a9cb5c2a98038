/**
 * The horn as the trade speaks of it: tube, tone holes, cups, keys, links, springs, rods and every place that carries a
 * material. The main type is {@link hornwright.bench.horn.Keywork}, an immutable description of one instrument as its maker
 * built it. What was found or measured on a particular horn is not kept here, and nothing here reads or writes a file.
 *
 * <p>Lengths are millimetres, forces newtons, torques newton millimetres, rotations radians (0 closed, positive open).
 * Positions run along the bore from the small end of the neck; angles are degrees from the front, positive to the player's
 * right. Read first: docs/guide/keywork-file.md.
 */
@NullMarked
package hornwright.bench.horn;

import org.jspecify.annotations.NullMarked;
