/** Tests of keywork files. */
@NullMarked
package hornwright.desk.keyworkfile;

import org.jspecify.annotations.NullMarked;
