/**
 * What lies on the shelf: pads, sheets, felts, resonators, springs, tubing, with counts and prices.
 *
 * <p>Main type: {@link hornwright.bench.stock.Stock}. It neither orders nor reserves anything.
 */
@NullMarked
package hornwright.bench.stock;

import org.jspecify.annotations.NullMarked;
