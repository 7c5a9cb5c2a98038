/**
 * What belongs to the whole shop: stock, materials and rules.
 *
 * <p>Main type: {@link hornwright.desk.web.shop.StockPages}. No horn is known here. Read {@code docs/guide/pages.md} first.
 */
@NullMarked
package hornwright.desk.web.shop;

import org.jspecify.annotations.NullMarked;
