/**
 * Horns that differ from a keywork file by the switches of its maker: {@link
 * hornwright.bench.horn.variant.Variants} takes keys away, joins them, moves them to the other side or adds one patterned on
 * its neighbours. What a switch means to the mechanism is read from the links, not from names of keys, wherever it can be.
 * It reads no files and solves no springs. Read first {@link hornwright.bench.horn.Switches}.
 */
@NullMarked
package hornwright.bench.horn.variant;

import org.jspecify.annotations.NullMarked;
