/** What the strict reader accepts and how it refuses. */
@NullMarked
package hornwright.desk.json;

import org.jspecify.annotations.NullMarked;
