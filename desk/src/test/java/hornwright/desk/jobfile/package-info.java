/** Tests of job files. */
@NullMarked
package hornwright.desk.jobfile;

import org.jspecify.annotations.NullMarked;
