/**
 * Whether the colours of states and materials can be told apart, also by eyes that lack one kind of cone. Main type {@link
 * hornwright.desk.colour.ToldApartTest}. It judges colours alone; icons, patterns and words carry the meaning anyway.
 * Source: Sharma, Wu, Dalal, "The CIEDE2000 color-difference formula" (2005).
 */
@NullMarked
package hornwright.desk.colour;

import org.jspecify.annotations.NullMarked;
