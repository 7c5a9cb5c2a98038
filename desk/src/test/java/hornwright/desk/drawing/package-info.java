/** Tests of the drawings. */
@NullMarked
package hornwright.desk.drawing;

import org.jspecify.annotations.NullMarked;
