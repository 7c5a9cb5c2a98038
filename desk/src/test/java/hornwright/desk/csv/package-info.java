/** Tests of reading tables. */
@NullMarked
package hornwright.desk.csv;

import org.jspecify.annotations.NullMarked;
