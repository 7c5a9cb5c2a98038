/**
 * What the horn needs from the shelf or the supplier: pads by size, pieces to cut, springs; and what it all takes in hours
 * and money, as ranges.
 *
 * <p>Main types: {@link hornwright.bench.plan.orders.PadOrders}, {@link hornwright.bench.plan.orders.CutList},
 * {@link hornwright.bench.plan.orders.Costing}. Nothing is reserved or ordered here. Read PadOrders first.
 */
@NullMarked
package hornwright.bench.plan.orders;

import org.jspecify.annotations.NullMarked;
