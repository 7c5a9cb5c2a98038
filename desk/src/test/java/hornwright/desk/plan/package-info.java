/** The plan of whole horns, from keywork files. */
@NullMarked
package hornwright.desk.plan;

import org.jspecify.annotations.NullMarked;
