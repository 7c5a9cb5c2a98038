/**
 * The command line: one class a command, each calling the same use cases as the pages.
 *
 * <p>Main type: {@link hornwright.desk.cli.Hornwright}. It computes nothing and knows no SQL. Exit codes: 0 done, 1 ran
 * but something asked for could not be had, 2 bad input, 3 data damaged or from a newer program. Read
 * {@code docs/guide/commands.md} first.
 */
@NullMarked
package hornwright.desk.cli;

import org.jspecify.annotations.NullMarked;
