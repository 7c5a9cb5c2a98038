/** Tests of bags. */
@NullMarked
package hornwright.desk.bag;

import org.jspecify.annotations.NullMarked;
