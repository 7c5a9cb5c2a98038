/** The verbs as pages and commands use them, on both databases. Main type: {@code ShopContract}. */
@NullMarked
package hornwright.desk.use;

import org.jspecify.annotations.NullMarked;
