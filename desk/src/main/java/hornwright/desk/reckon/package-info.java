/**
 * One engine at a time on the command line: JSON in, JSON out, exactly as the contract says. Each class here translates
 * between the fields with their units and an engine's own input and result records.
 *
 * <p>Main type: {@link hornwright.desk.reckon.Engine}; all are listed in {@link hornwright.desk.reckon.Engines}. No
 * formula lives here. Read {@code docs/guide/reckon.md} first.
 */
@NullMarked
package hornwright.desk.reckon;

import org.jspecify.annotations.NullMarked;
