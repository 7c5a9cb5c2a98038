/** Commands as a shell sees them: exit codes, standard output, standard error. */
@NullMarked
package hornwright.desk.cli;

import org.jspecify.annotations.NullMarked;
