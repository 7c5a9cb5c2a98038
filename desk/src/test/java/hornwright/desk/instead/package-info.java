/** What else could lie at a place, on the shipped horn. */
@NullMarked
package hornwright.desk.instead;

import org.jspecify.annotations.NullMarked;
