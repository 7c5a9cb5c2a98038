/** Tests of the texts by key. Source: as {@code hornwright.desk.message}. */
@NullMarked
package hornwright.desk.message;

import org.jspecify.annotations.NullMarked;
