/** What the trade knows from experience, asked of the demo horns: the answers must point the same way. */
@NullMarked
package hornwright.desk.practice;

import org.jspecify.annotations.NullMarked;
