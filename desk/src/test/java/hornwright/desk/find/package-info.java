/** Finding by beginnings of words. Main type: {@code ShelvesTest}. */
@NullMarked
package hornwright.desk.find;

import org.jspecify.annotations.NullMarked;
