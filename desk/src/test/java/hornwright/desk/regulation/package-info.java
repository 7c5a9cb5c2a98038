/** Regulation worked backwards on the shipped horns; it needs their keywork files, which only the desk can read. */
@NullMarked
package hornwright.desk.regulation;

import org.jspecify.annotations.NullMarked;
