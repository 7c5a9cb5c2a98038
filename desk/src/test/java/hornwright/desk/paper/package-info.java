/** Sheets as a validator, a ruler and a reader find them. */
@NullMarked
package hornwright.desk.paper;

import org.jspecify.annotations.NullMarked;
