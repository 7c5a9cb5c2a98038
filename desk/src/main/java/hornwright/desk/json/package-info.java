/**
 * Reading JSON as strictly as a micrometer: every field is asked for by name with its unit, and what is left over,
 * missing, repeated, of the wrong unit or out of range becomes a {@link hornwright.desk.json.Fault} with a JSON pointer,
 * a sentence and an example of what is right. All faults of an input are collected before any is told.
 *
 * <p>Main type: {@link hornwright.desk.json.Fields}. It does not know what the numbers mean. Read RFC 6901 (JSON
 * pointer) first.
 *
 * <pre>
 *   Faults faults = new Faults();
 *   Key key = Fields.of(node, "", faults).read(f -> new Key(
 *           f.text("id"), f.numberOr("flex_rad_per_Nmm", 0, Bound.NOT_NEGATIVE, "5e-5")));
 *   faults.refuseIfAny();     // throws BadInput, exit code 2
 * </pre>
 */
@NullMarked
package hornwright.desk.json;

import org.jspecify.annotations.NullMarked;
