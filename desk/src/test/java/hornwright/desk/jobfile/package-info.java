/** Job files: what is read, what is refused, and the schemas that say so. */
@NullMarked
package hornwright.desk.jobfile;

import org.jspecify.annotations.NullMarked;
