/**
 * What every bench sheet has in common: readings of one kind of work go in, and for each key, hole or joint a verdict, a
 * sentence, numbers and what to do come out.
 *
 * <p>Main type: {@link hornwright.bench.sheet.SheetAnswer}. It judges nothing itself; each sheet has a room of its own.
 * Read {@link hornwright.bench.sheet.SheetLine} first.
 */
@NullMarked
package hornwright.bench.sheet;

import org.jspecify.annotations.NullMarked;
