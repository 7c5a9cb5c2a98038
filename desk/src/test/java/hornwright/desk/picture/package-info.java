/** Tests of the darkroom. */
@NullMarked
package hornwright.desk.picture;

import org.jspecify.annotations.NullMarked;
