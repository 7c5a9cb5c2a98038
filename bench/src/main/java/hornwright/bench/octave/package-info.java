/**
 * The octave mechanism in its four states and the low table: what each contact should have, what it has, what to bend in
 * which order, and what that does in the other states.
 *
 * <p>Main types: {@link hornwright.bench.octave.OctaveSheet} and {@link hornwright.bench.octave.Contact}. It is rigid
 * geometry; forces are the linkage's business. Read {@link hornwright.bench.plan.measured.ClearanceBand} first.
 */
@NullMarked
package hornwright.bench.octave;

import org.jspecify.annotations.NullMarked;
